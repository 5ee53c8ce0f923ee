import { en } from '../../../../core/src/en.ts';
import { ChecklistFields } from './ChecklistFields.tsx';
import { LoadFields } from './LoadFields.tsx';
import type { MachineForm } from './machineForm.ts';
import { TankFields } from './TankFields.tsx';
import { WantedFields } from './WantedFields.tsx';
import { WorkFields } from './WorkFields.tsx';

/** What the machine is to do and under what; each group is one line until it is opened. */
export function Duty(props: { readonly form: MachineForm }) {
  return (
    <div class="block">
      <div class="head">
        <h2>{en`Flow, load and work`}</h2>
        <span class="faint">{en`all of it may stay empty; what needs it is then not checked`}</span>
      </div>
      <WantedFields form={props.form} />
      <LoadFields form={props.form} />
      <TankFields form={props.form} />
      <WorkFields form={props.form} />
      <ChecklistFields form={props.form} />
    </div>
  );
}
