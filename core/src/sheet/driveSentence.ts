import { en } from '../en.ts';
import { lengthText, type Say } from '../format.ts';
import type { DrawnStage, DriveDrawing } from './driveDrawing.ts';
import { shortName } from './paperText.ts';

/** What a picture of a drive shows, in one sentence, for those who do not see it. */
export function driveSentence(drawing: DriveDrawing, scale: string, say: Say): string {
  const { stages } = drawing;
  if (stages.length === 0) return en`Drive: both pumps turn with the motor.`;
  return en`Drive to scale ${scale}: ${stages.map((stage) => stageWords(stage, say)).join('; ')}.`;
}

function stageWords({ name, train, ends: [driver, driven], centre_m }: DrawnStage, say: Say): string {
  const whom = train === 'shared' ? en`both pumps` : en`pump ${train}`;
  const teeth = en`${driver.wheel.teeth} to ${driven.wheel.teeth} teeth`;
  return en`${shortName(name)} to ${whom}, ${teeth}, ${centre_m === null ? en`centre not given` : en`centres ${lengthText(centre_m, say)}`}`;
}
