package org.frisket.ui.bench.internal.rulers;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.frisket.geometry.Bounds;
import org.frisket.ui.LengthUnit;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;

/** One ruler: what is seen of it, the extent of the selection as a band, and a mark where the pointer is. */
final class RulerCanvas extends Canvas {

	private static final int THICKNESS_PX = 22;
	private static final int[] TICKS_PX = { 22, 9, 6, 4 };
	private static final int BAND_ALPHA = 60;
	private static final int OPAQUE = 255;
	private static final int TEXT_GAP_PX = 3;
	private static final float FONT_SCALE = 0.8f;

	private final boolean across;
	private final CanvasZoom zoom;
	private final Font font;
	private Bounds band = Bounds.EMPTY;
	private int pointer = -1;

	RulerCanvas(Composite parent, boolean across, CanvasZoom zoom) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
		this.across = across;
		this.zoom = zoom;
		Font usual = JFaceResources.getDialogFont();
		font = new LocalResourceManager(JFaceResources.getResources(), this).create(FontDescriptor.createFrom(usual)
				.setHeight(Math.round(usual.getFontData()[0].getHeight() * FONT_SCALE)));
		addListener(SWT.Paint, this::paint);
	}

	boolean isAcross() {
		return across;
	}

	@Override
	public Point computeSize(int widthHint, int heightHint, boolean changed) {
		return new Point(THICKNESS_PX, THICKNESS_PX);
	}

	/** The extent of the selection, in mm; empty for none. */
	void setBand(Bounds bounds) {
		if (!band.equals(bounds)) {
			band = bounds;
			redraw();
		}
	}

	/** Where the pointer is, in pixels along the ruler; -1 if it is elsewhere. */
	void setPointer(int px) {
		if (pointer != px) {
			redrawMark();
			pointer = px;
			redrawMark();
		}
	}

	private void redrawMark() {
		if (across) {
			redraw(pointer - 1, 0, 3, THICKNESS_PX, false);
		} else {
			redraw(0, pointer - 1, THICKNESS_PX, 3, false);
		}
	}

	private void paint(Event event) {
		GC gc = event.gc;
		Rectangle area = getClientArea();
		gc.setBackground(ThemeColour.BENCH_RULER.colour());
		gc.fillRectangle(area);
		gc.setFont(font);
		paintBand(gc);
		paintTicks(gc, new Rectangle(event.x, event.y, event.width, event.height));
		gc.setForeground(ThemeColour.BENCH_SHEET_EDGE.colour());
		line(gc, 0, across ? area.width : area.height, THICKNESS_PX - 1);
		if (pointer >= 0) {
			gc.setForeground(ThemeColour.BENCH_ACCENT.colour());
			mark(gc, pointer, THICKNESS_PX);
		}
	}

	private void paintBand(GC gc) {
		if (!band.isEmpty()) {
			int from = px(across ? band.minX() : band.minY());
			int to = px(across ? band.maxX() : band.maxY());
			gc.setBackground(ThemeColour.BENCH_ACCENT.colour());
			gc.setAlpha(BAND_ALPHA);
			int length = Math.max(1, to - from);
			if (across) {
				gc.fillRectangle(from, 0, length, THICKNESS_PX - 1);
			} else {
				gc.fillRectangle(0, from, THICKNESS_PX - 1, length);
			}
			gc.setAlpha(OPAQUE);
		}
	}

	private void paintTicks(GC gc, Rectangle dirty) {
		RulerScale scale = RulerScale.of(LengthUnit.shown(), zoom.pixelsPerMm());
		int from = across ? dirty.x : dirty.y;
		int to = across ? dirty.x + dirty.width : dirty.y + dirty.height;
		// a number may reach into the painted part from a tick before it
		long first = scale.before(mm(from)) - scale.every()[0];
		gc.setForeground(ThemeColour.BENCH_RULER_MARK.colour());
		long last = scale.before(mm(to)) + scale.every()[0];
		for (long i = first; i <= last; i++) {
			int level = scale.level(i);
			int place = px(scale.millimetres(i));
			mark(gc, place, TICKS_PX[Math.min(level, TICKS_PX.length - 1)]);
			if (level == 0) {
				number(gc, scale.text(i), place);
			}
		}
	}

	/** Beside its tick; on the ruler at the left it is turned to be read from the right. */
	private void number(GC gc, String text, int place) {
		if (across) {
			gc.drawText(text, place + TEXT_GAP_PX, 0, true);
			return;
		}
		Transform turn = new Transform(gc.getDevice());
		turn.translate(0, place - TEXT_GAP_PX);
		turn.rotate(-90);
		gc.setTransform(turn);
		gc.drawText(text, 0, 0, true);
		gc.setTransform(null);
		turn.dispose();
	}

	private void mark(GC gc, int place, int length) {
		if (across) {
			gc.drawLine(place, THICKNESS_PX - length, place, THICKNESS_PX - 1);
		} else {
			gc.drawLine(THICKNESS_PX - length, place, THICKNESS_PX - 1, place);
		}
	}

	private void line(GC gc, int from, int to, int away) {
		if (across) {
			gc.drawLine(from, away, to, away);
		} else {
			gc.drawLine(away, from, away, to);
		}
	}

	private int px(double mm) {
		org.frisket.geometry.Point place = new org.frisket.geometry.Point(across ? mm : 0, across ? 0 : mm);
		return across ? zoom.toPixel(place).x : zoom.toPixel(place).y;
	}

	private double mm(int px) {
		return across ? zoom.toMm(px, 0).x() : zoom.toMm(0, px).y();
	}
}
