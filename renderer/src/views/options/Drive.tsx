import { createMemo, createSignal, For, onCleanup, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { Plan, PlannedOption } from '../../../../core/src/index.ts';
import { type DrawnWheel, driveDrawing } from '../../../../core/src/sheet/driveDrawing.ts';
import { driveSentence } from '../../../../core/src/sheet/driveSentence.ts';
import { useApp } from '../../state/app.ts';
import { loopPath, type ScreenDrive, screenDrive } from './screenDrive.ts';

/** A width to draw to before the page says what there is. */
const USUAL_WIDTH = 360;

/** The chosen drive to scale, what comes off dotted beneath it. A is solid, B dashed. */
export function Drive(props: { readonly plan: Plan; readonly option: PlannedOption; readonly fitted: PlannedOption }) {
  const app = useApp();
  const [width, setWidth] = createSignal(USUAL_WIDTH);
  const follow = (figure: HTMLElement) => {
    const watch = new ResizeObserver(([entry]) => entry !== undefined && setWidth(Math.max(200, Math.floor(entry.contentRect.width))));
    watch.observe(figure);
    onCleanup(() => watch.disconnect());
  };
  const drawing = createMemo(() => driveDrawing(props.plan, props.option, props.fitted));
  const screen = createMemo(() => screenDrive(drawing(), width(), app.say()));
  const scale = () => `1 : ${String(screen().scale).replace('.', app.say().decimal)}`;
  const axis = () => drawing().sameShaft?.map((point) => screen().px(point)) ?? [];
  return (
    <figure class="drive" ref={follow}>
      <svg width={width()} height={screen().height} role="img" aria-label={driveSentence(drawing(), scale(), app.say())}>
        <For each={drawing().stages}>
          {(stage) => (
            <>
              <Show when={stage.oldLoop}>{(loop) => <path class="off" d={loopPath(loop(), screen())} />}</Show>
              <For each={stage.ends}>{({ off }) => <Show when={off}>{(wheel) => <Wheel wheel={wheel()} screen={screen()} />}</Show>}</For>
            </>
          )}
        </For>
        <For each={drawing().stages}>
          {(stage) => (
            <>
              <For each={stage.ends}>{({ wheel }) => <Wheel wheel={wheel} screen={screen()} />}</For>
              <Show when={stage.loop}>{(loop) => <path class={`loop ${stage.train}`} d={loopPath(loop(), screen())} />}</Show>
            </>
          )}
        </For>
        <Show when={axis().length === 2}>
          <path
            class="axis"
            d={`M${axis()
              .map(({ x, y }) => `${x} ${y}`)
              .join('L')}`}
          />
        </Show>
        <For each={screen().dimensions}>
          {({ from, to, y }) => <path class="sl" fill="none" d={`M${from} ${y - 4}v8M${to} ${y - 4}v8M${from} ${y}H${to}`} />}
        </For>
        <For each={screen().labels}>
          {(label) => (
            <text classList={{ m: true, new: label.isNew }} x={label.x} y={label.y}>
              {label.words}
            </text>
          )}
        </For>
      </svg>
      <figcaption class="faint">
        <Show when={drawing().stages.length > 0} fallback={en`Both pumps turn with the motor: no stage to draw.`}>
          {drawing().stages.some(({ centre_m }) => centre_m === null)
            ? en`Wheels to scale, centres not, about ${scale()}.`
            : en`To scale, about ${scale()}.`}{' '}
          {en`A solid, B dashed; dotted comes off.`}
        </Show>
      </figcaption>
    </figure>
  );
}

/** A pitch circle with one mark a tooth; what stays is faint, what comes off dotted. */
function Wheel(props: { readonly wheel: DrawnWheel; readonly screen: ScreenDrive }) {
  const at = () => props.screen.px(props.wheel.centre);
  const radius = () => (props.wheel.pitchDiameter_m / 2) * props.screen.px_per_m;
  return (
    <>
      <circle
        class={`wheel ${props.wheel.state}`}
        cx={at().x}
        cy={at().y}
        r={radius()}
        pathLength={props.wheel.state === 'off' ? undefined : props.wheel.teeth * 4}
      />
      <Show when={props.wheel.state !== 'off'}>
        <circle class="shaft" cx={at().x} cy={at().y} r="2.5" />
      </Show>
    </>
  );
}
