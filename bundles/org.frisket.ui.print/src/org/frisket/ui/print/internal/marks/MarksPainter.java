package org.frisket.ui.print.internal.marks;

import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.print.marks.Mark;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.measure.Asymmetry;
import org.frisket.print.output.PartOnSheet;
import org.frisket.ui.LengthText;
import org.frisket.ui.ThemeColour;

/** Paints a sheet with its marks as they print, and what was measured of them. */
final class MarksPainter {

	private static final int CAPTION_LINES = 3;
	private static final int SCALE_MM = 50;
	private static final int PALE = 110;
	private static final int PALER = 40;
	private static final int OPAQUE = 255;
	private static final int[] DASHES = { 5, 4 };
	private static final int[] DOTS = { 2, 3 };
	private static final int TICK_PX = 4;
	private static final int HEAD_PX = 6;
	private static final double HEAD_TURN = Math.toRadians(150);
	private static final int RING_PX = 5;
	private static final int SEEN_PX = 2;

	private Frame frame = new Frame(1, 0, 0);

	/** Where the sheet was seen last. */
	Frame frame() {
		return frame;
	}

	/**
	 * @param lit  marks that are being measured, from 0: one, or the two that a length lies between
	 * @param scan laid flat under the design; null for none
	 */
	void paint(GC gc, Rectangle area, MarksPicture picture, int[] lit, Image scan) {
		int line = gc.getFontMetrics().getHeight();
		frame = Frame.of(picture.width(), picture.height(), area, CAPTION_LINES * line);
		gc.setAntialias(SWT.ON);
		gc.setBackground(ThemeColour.BENCH_DESK.colour());
		gc.fillRectangle(area);
		Rectangle sheet = frame.box(new Bounds(0, 0, picture.width(), picture.height()));
		gc.setBackground(ThemeColour.BENCH_SHEET.colour());
		gc.fillRectangle(sheet);
		if (scan != null) {
			Rectangle whole = scan.getBounds();
			gc.drawImage(scan, 0, 0, whole.width, whole.height, sheet.x, sheet.y, sheet.width, sheet.height);
		}
		gc.setForeground(ThemeColour.BENCH_SHEET_EDGE.colour());
		gc.drawRectangle(sheet);
		margins(gc, picture);
		picture.parts().forEach(part -> part(gc, part));
		picture.plan().ifPresent(plan -> {
			picture.asymmetry().stream().filter(Asymmetry::free).forEach(odd -> bare(gc, plan, odd));
			between(gc, plan, lit);
			for (int i = 0; i < plan.marks().size(); i++) {
				mark(gc, plan.marks().get(i), picture.doubtful().contains(i), isLit(lit, i), scan != null);
			}
			arrows(gc, plan, picture);
			for (int i = 0; i < plan.marks().size(); i++) {
				number(gc, plan, i, isLit(lit, i));
			}
		});
		caption(gc, picture, sheet, line, area);
	}

	private static boolean isLit(int[] lit, int mark) {
		for (int each : lit) {
			if (each == mark) {
				return true;
			}
		}
		return false;
	}

	private void margins(GC gc, MarksPicture picture) {
		gc.setForeground(ThemeColour.BENCH_INK.colour());
		gc.setAlpha(PALE);
		Bounds page = new Bounds(0, 0, picture.width(), picture.height());
		gc.setLineDash(DASHES);
		gc.drawRectangle(frame.box(page.grown(-picture.printMargin())));
		if (Math.abs(picture.margin() - picture.printMargin()) * frame.scale() > 1 && picture.margin() > 0) {
			gc.setLineDash(DOTS);
			gc.drawRectangle(frame.box(page.grown(-picture.margin())));
		}
		gc.setLineStyle(SWT.LINE_SOLID);
		gc.setAlpha(OPAQUE);
	}

	private void part(GC gc, PartOnSheet part) {
		Path path = frame.path(gc.getDevice(), part.room());
		gc.setBackground(ThemeColour.OPERATION_CUT.colour());
		gc.setForeground(ThemeColour.OPERATION_CUT.colour());
		gc.setAlpha(PALER / 2);
		gc.fillPath(path);
		gc.setAlpha(PALE);
		gc.drawPath(path);
		gc.setAlpha(OPAQUE);
		path.dispose();
	}

	/** Where a sheet that looks the same after a half turn would have another mark. */
	private void bare(GC gc, MarkPlan plan, Asymmetry odd) {
		int radius = Math.max(RING_PX, (int) Math.round(plan.marks().get(odd.mark()).design().size() * frame.scale() / 2));
		gc.setForeground(ThemeColour.BENCH_INK.colour());
		gc.setAlpha(PALE);
		gc.setLineDash(DOTS);
		gc.drawOval(frame.x(odd.bare().x()) - radius, frame.y(odd.bare().y()) - radius, 2 * radius, 2 * radius);
		gc.setLineStyle(SWT.LINE_SOLID);
		gc.setAlpha(OPAQUE);
	}

	private void mark(GC gc, Mark mark, boolean doubtful, boolean lit, boolean overScan) {
		Path path = frame.path(gc.getDevice(), mark.region());
		if (overScan) {
			// the print itself is what is to be seen
			gc.setForeground(ThemeColour.BENCH_SELECTION.colour());
			gc.drawPath(path);
		} else {
			gc.setBackground(ThemeColour.BENCH_INK.colour());
			gc.fillPath(path);
		}
		path.dispose();
		gc.setForeground(doubtful ? ThemeColour.FINDING_CAUTION.colour() : ThemeColour.BENCH_INK.colour());
		gc.setAlpha(doubtful ? OPAQUE : PALE);
		gc.setLineDash(DOTS);
		gc.drawRectangle(frame.box(mark.bounds().grown(mark.design().quiet())));
		gc.setLineStyle(SWT.LINE_SOLID);
		gc.setAlpha(OPAQUE);
		if (lit) {
			int radius = (int) Math.round(mark.design().size() * frame.scale() / 2) + 2 * RING_PX;
			gc.setForeground(ThemeColour.BENCH_SELECTION.colour());
			gc.setLineWidth(3);
			gc.drawOval(frame.x(mark.place().x()) - radius, frame.y(mark.place().y()) - radius, 2 * radius, 2 * radius);
			gc.setLineWidth(1);
		}
	}

	/** The length that is being measured. */
	private void between(GC gc, MarkPlan plan, int[] lit) {
		if (lit.length == 2) {
			Point one = plan.marks().get(lit[0]).place();
			Point other = plan.marks().get(lit[1]).place();
			gc.setForeground(ThemeColour.BENCH_SELECTION.colour());
			gc.setLineWidth(2);
			gc.drawLine(frame.x(one.x()), frame.y(one.y()), frame.x(other.x()), frame.y(other.y()));
			gc.setLineWidth(1);
		}
	}

	private void arrows(GC gc, MarkPlan plan, MarksPicture picture) {
		for (int i = 0; i < picture.residuals().size(); i++) {
			if (picture.residuals().get(i).isPresent()) {
				boolean worst = picture.worst().filter(Integer.valueOf(i)::equals).isPresent();
				Point from = plan.marks().get(i).place();
				arrow(gc, from, from.plus(picture.residuals().get(i).get().times(picture.factor())),
						worst ? ThemeColour.BENCH_REMOVED.colour() : ThemeColour.BENCH_SELECTION.colour());
			}
		}
	}

	private void arrow(GC gc, Point from, Point to, Color colour) {
		int x = frame.x(to.x());
		int y = frame.y(to.y());
		int dx = x - frame.x(from.x());
		int dy = y - frame.y(from.y());
		if (Math.hypot(dx, dy) < SEEN_PX) {
			return;
		}
		gc.setForeground(colour);
		gc.setLineWidth(2);
		gc.drawLine(x - dx, y - dy, x, y);
		double direction = Math.atan2(dy, dx);
		for (double turn : new double[] { HEAD_TURN, -HEAD_TURN }) {
			gc.drawLine(x, y, (int) Math.round(x + HEAD_PX * Math.cos(direction + turn)),
					(int) Math.round(y + HEAD_PX * Math.sin(direction + turn)));
		}
		gc.setLineWidth(1);
	}

	/** Beside the mark, towards the middle of the sheet, where nothing cuts it off. */
	private void number(GC gc, MarkPlan plan, int index, boolean lit) {
		Mark mark = plan.marks().get(index);
		String text = String.valueOf(index + 1);
		org.eclipse.swt.graphics.Point size = gc.textExtent(text);
		int away = (int) Math.round((mark.design().size() / 2 + mark.design().quiet()) * frame.scale()) + RING_PX;
		int side = mark.place().x() < plan.width() / 2 ? 1 : -1;
		int x = frame.x(mark.place().x()) + side * (away + size.x / 2);
		int y = frame.y(mark.place().y());
		gc.setBackground(lit ? ThemeColour.BENCH_SELECTION.colour() : ThemeColour.BENCH_TAG.colour());
		gc.setForeground(ThemeColour.BENCH_TAG_TEXT.colour());
		gc.fillRectangle(x - size.x / 2 - TICK_PX, y - size.y / 2 - 1, size.x + 2 * TICK_PX, size.y + 2);
		gc.drawText(text, x - size.x / 2, y - size.y / 2, true);
	}

	private void caption(GC gc, MarksPicture picture, Rectangle sheet, int line, Rectangle area) {
		gc.setForeground(ThemeColour.BENCH_RULER_MARK.colour());
		int bar = (int) Math.round(SCALE_MM * frame.scale());
		String length = LengthText.of(SCALE_MM);
		String words = NLS.bind(Messages.MarksPainter_caption, picture.name(),
				LengthText.size(picture.width(), picture.height()));
		int x = Math.max(TICK_PX, Math.min(sheet.x, area.width - bar - gc.textExtent(length + words).x - 3 * line));
		int y = sheet.y + sheet.height + line / 2;
		int middle = y + line / 2;
		gc.drawLine(x, middle, x + bar, middle);
		gc.drawLine(x, middle - TICK_PX, x, middle + TICK_PX);
		gc.drawLine(x + bar, middle - TICK_PX, x + bar, middle + TICK_PX);
		gc.drawText(length, x + bar + line / 2, y, true);
		gc.drawText(words, x + bar + gc.textExtent(length).x + line, y, true);
		String legend = legend(picture);
		gc.drawText(legend, Math.max(TICK_PX, Math.min(x, area.width - gc.textExtent(legend).x - TICK_PX)), y + line, true);
	}

	static String legend(MarksPicture picture) {
		if (picture.hasArrows()) {
			return NLS.bind(Messages.MarksPainter_arrows, Math.round(picture.factor()));
		}
		if (picture.plan().isEmpty()) {
			return ""; //$NON-NLS-1$
		}
		List<Asymmetry> odd = picture.asymmetry();
		return odd.isEmpty() ? Messages.MarksPainter_symmetric
				: odd.stream().anyMatch(Asymmetry::free) ? Messages.MarksPainter_rings
						: NLS.bind(Messages.MarksPainter_unlike, odd.get(0).mark() + 1);
	}
}
