import { ICommandService } from '@univerjs/core';
import { SetFormulaCalculationResultMutation } from '@univerjs/engine-formula';
import type { Viewport } from '@univerjs/engine-render';
import { IRenderManagerService, SHEET_VIEWPORT_KEY } from '@univerjs/engine-render';
import { SheetSkeletonManagerService } from '@univerjs/sheets-ui';
import { SetRangeValuesMutation } from '@univerjs/sheets';
import type { StandInArea, ChartState } from '../../officeStandIn/book';
import type { UniverBook } from '../univer/book';
import { ChartCard } from './card';
import { chartData } from './data';

/** On the canvas, headings included; what is left of and above the edges is under frozen cells. */
interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly edgeLeft: number;
  readonly edgeTop: number;
}
interface Moved {
  readonly x: number;
  readonly y: number;
  readonly scaleX: number;
  readonly scaleY: number;
  readonly headX: number;
  readonly headY: number;
}

/** Room for the shadow. */
const OUTSIDE = 8;
const DEFAULT_PLACE: StandInArea = { row: 1, column: 1, rows: 15, columns: 7 };
const REDRAW_AFTER = new Set<string>([SetFormulaCalculationResultMutation.id, SetRangeValuesMutation.id]);

/**
 * Charts of the open sheet, drawn over the cells they stand on: they follow scrolling, zoom and column
 * widths, and are drawn again when the cells they show change.
 */
export class ChartLayer {
  private readonly root = document.createElement('div');
  private readonly cards = new Map<string, ChartCard>();
  private viewport: Viewport | undefined;
  private placing = 0;
  private drawing: ReturnType<typeof setTimeout> | undefined;

  constructor(
    private readonly open: UniverBook,
    private readonly home: HTMLElement,
  ) {
    this.root.className = 'chart-layer';
    this.root.setAttribute('role', 'group');
    this.root.setAttribute('aria-label', 'Charts of this sheet');
    home.append(this.root);
    open.context.engine.injector.get(ICommandService).onCommandExecuted(({ id }) => {
      this.place();
      if (REDRAW_AFTER.has(id)) this.redraw();
      else if (id.startsWith('sheet.operation.set-worksheet-active')) this.redraw();
    });
    open.beside.listen(() => {
      this.redraw();
    });
    new ResizeObserver(() => {
      this.place();
    }).observe(home);
    // Turning the wheel over a chart scrolls the sheet under it.
    this.root.addEventListener(
      'wheel',
      (event) => {
        if ((event.target as Element).closest('.chart-table')) return;
        event.preventDefault();
        this.sheetCanvas()?.dispatchEvent(
          new WheelEvent('wheel', {
            deltaX: event.deltaX,
            deltaY: event.deltaY,
            deltaMode: event.deltaMode,
            clientX: event.clientX,
            clientY: event.clientY,
            bubbles: true,
            cancelable: true,
          }),
        );
      },
      { passive: false },
    );
    this.redraw();
  }

  private sheetCanvas(): HTMLCanvasElement | undefined {
    return this.home.querySelector<HTMLCanvasElement>('canvas[id^="univer-sheet-main-canvas"]') ?? undefined;
  }

  private async states(): Promise<{ sheet: string; charts: readonly ChartState[] }> {
    const sheet = await this.open.book.activeSheet();
    return { sheet, charts: await this.open.book.charts(sheet) };
  }

  /** Soon, once for many changes. */
  redraw(): void {
    clearTimeout(this.drawing);
    this.drawing = setTimeout(() => {
      void this.drawNow();
    }, 60);
  }

  private async drawNow(): Promise<void> {
    const { sheet, charts } = await this.states();
    for (const [id, card] of this.cards)
      if (!charts.some((c) => c.id === id)) {
        card.remove();
        this.cards.delete(id);
      }
    for (const chart of charts) {
      let card = this.cards.get(chart.id);
      if (!card) {
        card = new ChartCard();
        this.cards.set(chart.id, card);
        this.root.append(card.root);
      }
      card.show(await chartData(this.open.book, sheet, chart));
    }
    this.place();
  }

  /** At the next frame, where the cells are now. */
  place(): void {
    if (this.cards.size === 0 || this.placing !== 0) return;
    this.placing = requestAnimationFrame(() => {
      this.placing = 0;
      void this.placeNow();
    });
  }

  private moved(): Moved | undefined {
    const render = this.open.context.engine.injector
      .get(IRenderManagerService)
      .getRenderById(this.open.context.unitId);
    const viewport = render?.scene.getViewport(SHEET_VIEWPORT_KEY.VIEW_MAIN);
    const skeleton = render?.with(SheetSkeletonManagerService).getCurrentSkeleton();
    if (!render || !viewport || !skeleton) return undefined;
    if (viewport !== this.viewport) {
      this.viewport = viewport;
      viewport.onScrollAfter$.subscribeEvent(() => {
        this.place();
      });
    }
    const { scaleX, scaleY } = render.scene.getAncestorScale();
    return {
      x: viewport.viewportScrollX,
      y: viewport.viewportScrollY,
      scaleX,
      scaleY,
      headX: skeleton.rowHeaderWidth,
      headY: skeleton.columnHeaderHeight,
    };
  }

  /** Over frozen rows and columns a chart stays with them; any other slides under them. */
  private boxOf(sheet: string, place: StandInArea, moved: Moved): Box {
    const facade = this.open.context.facade(sheet);
    const { row, column, rows, columns } = this.open.context.clip(sheet, place);
    const { xSplit, ySplit } = facade.getFreeze();
    const from = facade.getRange(row, column).getCellRect();
    const to = facade.getRange(row + rows - 1, column + columns - 1).getCellRect();
    const edge = facade.getRange(ySplit, xSplit).getCellRect();
    const [slidesX, slidesY] = [column >= xSplit, row >= ySplit];
    return {
      left: (from.left - (slidesX ? moved.x : 0)) * moved.scaleX,
      top: (from.top - (slidesY ? moved.y : 0)) * moved.scaleY,
      width: (to.right - from.left) * moved.scaleX,
      height: (to.bottom - from.top) * moved.scaleY,
      edgeLeft: slidesX ? edge.left * moved.scaleX : 0,
      edgeTop: slidesY ? edge.top * moved.scaleY : 0,
    };
  }

  private async placeNow(): Promise<void> {
    const { sheet, charts } = await this.states();
    const canvas = this.sheetCanvas();
    const moved = this.moved();
    if (!canvas || !moved) return;
    const outer = this.home.getBoundingClientRect();
    const inner = canvas.getBoundingClientRect();
    const [headX, headY] = [moved.headX * moved.scaleX, moved.headY * moved.scaleY];
    // Cut at the headings: a chart scrolled away must not cover them.
    Object.assign(this.root.style, {
      left: `${inner.left - outer.left + headX}px`,
      top: `${inner.top - outer.top + headY}px`,
      width: `${inner.width - headX - 12}px`,
      height: `${inner.height - headY - 12}px`,
    });
    for (const chart of charts) {
      const root = this.cards.get(chart.id)?.root;
      if (!root) continue;
      const box = this.boxOf(sheet, chart.place ?? DEFAULT_PLACE, moved);
      Object.assign(root.style, {
        transform: `translate(${Math.round(box.left - headX)}px, ${Math.round(box.top - headY)}px)`,
        width: `${Math.round(box.width)}px`,
        height: `${Math.round(box.height)}px`,
        clipPath: `inset(${Math.max(-OUTSIDE, box.edgeTop - box.top)}px ${-OUTSIDE}px ${-OUTSIDE}px ${Math.max(-OUTSIDE, box.edgeLeft - box.left)}px)`,
      });
    }
  }
}
