import type { StoreApi } from 'zustand';
import { type PlacedLabel, steadyRange } from '../../plot/index.ts';
import type { Workbench } from '../../state/workbench.ts';
import { curveLabels } from './curveLabels.ts';
import { markFirstPicture } from './markFirstPicture.ts';
import { paintPicture } from './paintPicture.ts';
import { type Palette, readPalette } from './palette.ts';
import type { Picture } from './picture.ts';
import { plotLayout } from './plotLayout.ts';
import { type AxisRange, type PlotStructure, plotStructure } from './plotStructure.ts';
import { pointerHeld } from './pointerHeld.ts';
import { readings } from './readings.ts';
import type { PlotView } from './view.ts';

/** What a painter tells the component around it. */
export interface PainterEvents {
  /** The frame has changed: ticks, names, sizes. */
  onStructure(structure: PlotStructure | null): void;
  /** After every painted frame: places and readings, to be written straight into the page. */
  onFrame(frame: PlotFrame): void;
}

export interface PlotFrame {
  readonly picture: Picture;
  readonly structure: PlotStructure;
  readonly labels: readonly PlacedLabel[];
  readonly cursorHz: number | null;
  readonly readings: ReturnType<typeof readings>;
}

/**
 * Paints one view of the store into a canvas, at most once per frame of the display and without React: an edit or a
 * movement of the cursor only asks for the next frame.
 */
export class PlotPainter {
  private picture: Picture | null = null;
  private input: readonly unknown[] = [];
  /** undefined before the first frame. */
  private structure: PlotStructure | null | undefined;
  private ranges: { left: AxisRange | null; right: AxisRange | null } = { left: null, right: null };
  private labels: readonly PlacedLabel[] = [];
  private widths = new Map<string, number>();
  private palette: Palette | null = null;
  private requested = 0;
  private size = { widthPx: 0, heightPx: 0, remPx: 16 };

  constructor(
    private readonly canvas: HTMLCanvasElement,
    private readonly store: StoreApi<Workbench>,
    private readonly view: PlotView,
    private readonly events: PainterEvents,
  ) {}

  /** Takes a new size, theme or type size: everything measured is measured again. */
  refit(widthPx: number, heightPx: number): void {
    const remPx = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
    const ratio = window.devicePixelRatio || 1;
    this.size = { widthPx, heightPx, remPx };
    this.canvas.width = Math.round(widthPx * ratio);
    this.canvas.height = Math.round(heightPx * ratio);
    this.palette = null;
    this.widths = new Map();
    this.labels = [];
    this.paint();
  }

  /** Asks for the next frame. */
  readonly request = (): void => {
    if (this.requested === 0) this.requested = requestAnimationFrame(() => this.paint());
  };

  stop(): void {
    if (this.requested !== 0) cancelAnimationFrame(this.requested);
    this.requested = 0;
  }

  private paint(): void {
    this.stop();
    const context = this.canvas.getContext('2d');
    if (!context || this.size.widthPx < 1 || this.size.heightPx < 1) return;
    const state = this.store.getState();
    const input = [state.project, state.evaluation, state.ghosts, state.settings];
    if (input.some((part, index) => part !== this.input[index])) {
      this.input = input;
      this.picture = this.view.picture(state);
    }
    const ratio = window.devicePixelRatio || 1;
    context.setTransform(ratio, 0, 0, ratio, 0, 0);
    const { picture } = this;
    if (!picture) {
      context.clearRect(0, 0, this.size.widthPx, this.size.heightPx);
      if (this.structure !== null) this.events.onStructure(null);
      this.structure = null;
      return;
    }
    const structure = this.frameOf(picture);
    this.palette ??= readPalette(this.canvas);
    paintPicture(context, picture, structure, this.palette, state.lifted);
    if (picture.curves.length > 0) markFirstPicture();
    const lineHeightPx = 0.95 * this.size.remPx;
    this.labels = curveLabels(picture, structure, this.widthOf(context), lineHeightPx, this.labels);
    const { cursorHz } = state;
    this.events.onFrame({
      picture,
      structure,
      labels: this.labels,
      cursorHz,
      readings: cursorHz === null ? [] : readings(picture, cursorHz),
    });
  }

  private frameOf(picture: Picture): PlotStructure {
    const held = pointerHeld();
    const left = steadyRange(this.ranges.left, picture.left.range, 0.1, held);
    const right = picture.right ? steadyRange(this.ranges.right, picture.right.range, 0.1, held) : null;
    this.ranges = { left, right };
    const area = plotLayout(this.size.widthPx, this.size.heightPx, this.size.remPx, right !== null);
    const structure = plotStructure(picture, { left, right }, this.size, area);
    if (structure.signature === this.structure?.signature) return this.structure;
    this.structure = structure;
    this.events.onStructure(structure);
    return structure;
  }

  private widthOf(context: CanvasRenderingContext2D): (text: string) => number {
    return (text) => {
      let width = this.widths.get(text);
      if (width === undefined) {
        context.font = `600 ${0.75 * this.size.remPx}px ${getComputedStyle(this.canvas).fontFamily}`;
        width = context.measureText(text).width + 4;
        this.widths.set(text, width);
      }
      return width;
    };
  }
}
