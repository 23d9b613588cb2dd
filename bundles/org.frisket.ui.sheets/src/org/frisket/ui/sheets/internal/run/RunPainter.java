package org.frisket.ui.sheets.internal.run;

import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.frisket.material.tools.Tool;
import org.frisket.run.play.Moment;
import org.frisket.run.play.Playback;
import org.frisket.toolpath.Stage;
import org.frisket.toolpath.Timeline;
import org.frisket.ui.LengthText;
import org.frisket.ui.ThemeColour;

/**
 * Paints a run at a moment. What does not change from one moment to the next is kept as pictures: the sheet with all lines
 * pale, and the same with the lines that are done, to which only those are added that have been done since.
 */
final class RunPainter {

	/** Below the sheet stand a scale, its name and its size. */
	private static final int CAPTION_LINES = 2;
	private static final int SCALE_MM = 20;
	private static final int DESK_MARK_PX = 4;
	private static final int[] DOTS = { 1, 3 };
	private static final int TRAVEL_ALPHA = 110;
	/** Lines that are drawn in one go. */
	private static final int BATCH = 200;

	/** What the kept pictures were painted for. */
	private record Key(SheetRun run, Rectangle area, boolean travel, RGB desk, RGB sheet) {
	}

	private Key key;
	private Image ground;
	private Image kept;
	private int keptStrokes;
	private SheetFrame frame = new SheetFrame(1, 0, 0);

	/** Where the sheet was seen last. */
	SheetFrame frame() {
		return frame;
	}

	void dispose() {
		if (ground != null) {
			ground.dispose();
			kept.dispose();
			ground = null;
			kept = null;
		}
		key = null;
	}

	void paint(GC gc, Rectangle area, SheetRun run, Moment moment, boolean travel) {
		if (area.width <= 0 || area.height <= 0) {
			return;
		}
		prepare(gc, new Key(run, area, travel, ThemeColour.BENCH_DESK.colour().getRGB(),
				ThemeColour.BENCH_SHEET.colour().getRGB()));
		keep(gc.getDevice(), run.playback(), moment.done());
		gc.drawImage(kept, 0, 0);
		paintUnderWay(gc, run.playback(), moment, travel);
	}

	private void prepare(GC gc, Key now) {
		if (now.equals(key)) {
			return;
		}
		dispose();
		key = now;
		int line = gc.getFontMetrics().getHeight();
		frame = SheetFrame.of(now.run.page(), now.area, CAPTION_LINES * line);
		Device device = gc.getDevice();
		ground = new Image(device, now.area.width, now.area.height);
		kept = new Image(device, now.area.width, now.area.height);
		GC on = new GC(ground);
		on.setFont(gc.getFont());
		paintGround(on, now, line);
		on.dispose();
		renew(device);
	}

	/** Nothing is done yet. */
	private void renew(Device device) {
		GC on = new GC(kept);
		on.drawImage(ground, 0, 0);
		on.dispose();
		keptStrokes = 0;
	}

	private void paintGround(GC gc, Key now, int line) {
		gc.setBackground(ThemeColour.BENCH_DESK.colour());
		gc.fillRectangle(now.area);
		Rectangle sheet = frame.pixels(now.run.page(), 0);
		gc.setBackground(ThemeColour.BENCH_SHEET.colour());
		gc.fillRectangle(sheet);
		gc.setForeground(ThemeColour.BENCH_SHEET_EDGE.colour());
		gc.drawRectangle(sheet);
		Playback playback = now.run.playback();
		if (now.travel) {
			paintTravels(gc, playback.travels());
		}
		paintStrokes(gc, playback, 0, playback.size(), false);
		paintCaption(gc, now, sheet, line);
	}

	private void paintTravels(GC gc, List<Timeline.Span> travels) {
		Path path = new Path(gc.getDevice());
		travels.forEach(travel -> add(path, travel));
		gc.setAntialias(SWT.ON);
		gc.setForeground(ThemeColour.BENCH_INK.colour());
		gc.setAlpha(TRAVEL_ALPHA);
		gc.setLineDash(DOTS);
		gc.drawPath(path);
		gc.setLineStyle(SWT.LINE_SOLID);
		gc.setAlpha(LinePen.OPAQUE);
		path.dispose();
	}

	private void add(Path path, Timeline.Span travel) {
		path.moveTo((float) frame.x(travel.start().x()), (float) frame.y(travel.start().y()));
		path.lineTo((float) frame.x(travel.end().x()), (float) frame.y(travel.end().y()));
	}

	private void paintStrokes(GC gc, Playback playback, int from, int to, boolean done) {
		int at = from;
		while (at < to) {
			int leg = playback.legOf(at);
			Stage stage = playback.legs().get(leg).stage();
			int end = Math.min(Math.min(to, at + BATCH),
					playback.legs().get(leg).first() + playback.legs().get(leg).strokes());
			Path path = new Path(gc.getDevice());
			for (int i = at; i < end; i++) {
				frame.add(path, playback.way(i));
			}
			if (done) {
				LinePen.solid(gc, path, stage);
			} else {
				LinePen.pale(gc, path, stage);
			}
			path.dispose();
			at = end;
		}
	}

	private void keep(Device device, Playback playback, int done) {
		if (done < keptStrokes) {
			renew(device);
		}
		if (done > keptStrokes) {
			GC on = new GC(kept);
			paintStrokes(on, playback, keptStrokes, done, true);
			on.dispose();
			keptStrokes = done;
		}
	}

	private void paintUnderWay(GC gc, Playback playback, Moment moment, boolean travel) {
		if (playback.size() == 0) {
			return;
		}
		if (moment.stroke() < playback.size()) {
			Path path = new Path(gc.getDevice());
			Stage stage = playback.legs().get(moment.leg()).stage();
			if (moment.isDown()) {
				frame.add(path, playback.way(moment.stroke()), moment.share());
				LinePen.thick(gc, path, stage);
			} else if (travel && moment.kind() == Timeline.Kind.TRAVEL) {
				path.moveTo((float) frame.x(moment.place().x()), (float) frame.y(moment.place().y()));
				path.lineTo((float) frame.x(playback.stroke(moment.stroke()).start().x()),
						(float) frame.y(playback.stroke(moment.stroke()).start().y()));
				gc.setForeground(ThemeColour.BENCH_SELECTION.colour());
				gc.drawPath(path);
			}
			path.dispose();
		}
		Tool tool = playback.legs().get(moment.leg()).work().tool();
		ToolMark.paint(gc, tool.kind(), ToolWords.of(tool), x(moment), y(moment), moment.isDown());
	}

	private int x(Moment moment) {
		return (int) Math.round(frame.x(moment.place().x()));
	}

	private int y(Moment moment) {
		return (int) Math.round(frame.y(moment.place().y()));
	}

	/** What is painted otherwise between two moments of a run; the first is not after the second. */
	Rectangle between(GC gc, Playback playback, Moment before, Moment after) {
		Rectangle changed = mark(gc, playback, before).union(mark(gc, playback, after));
		for (int i = before.done(); i <= Math.min(after.stroke(), playback.size() - 1); i++) {
			changed.add(frame.pixels(playback.way(i).bounds(), DESK_MARK_PX));
		}
		return changed;
	}

	private Rectangle mark(GC gc, Playback playback, Moment moment) {
		String name = ToolWords.of(playback.legs().get(moment.leg()).work().tool());
		Rectangle mark = ToolMark.bounds(gc, name, x(moment), y(moment));
		if (moment.kind() == Timeline.Kind.TRAVEL && moment.stroke() < playback.size()) {
			var start = playback.stroke(moment.stroke()).start();
			int x = (int) frame.x(start.x());
			int y = (int) frame.y(start.y());
			int left = Math.min(x, x(moment)) - 2;
			int top = Math.min(y, y(moment)) - 2;
			mark.add(new Rectangle(left, top, Math.max(x, x(moment)) + 3 - left, Math.max(y, y(moment)) + 3 - top));
		}
		return mark;
	}

	private void paintCaption(GC gc, Key now, Rectangle sheet, int line) {
		var job = now.run.content().job();
		String number = job.getNumber() == null || job.getNumber().isBlank() ? job.getTitle() : job.getNumber();
		String words = NLS.bind(Messages.RunPainter_caption, new Object[] { number == null ? "" : number, //$NON-NLS-1$
				now.run.name(), LengthText.size(now.run.page().width(), now.run.page().height()) });
		gc.setForeground(ThemeColour.BENCH_RULER_MARK.colour());
		int bar = (int) Math.round(SCALE_MM * frame.scale());
		String length = LengthText.of(SCALE_MM);
		int wide = bar + gc.textExtent(length + words).x + 2 * line;
		int y = sheet.y + sheet.height + line / 2;
		int x = Math.max(2, Math.min(sheet.x, now.area.width - wide));
		int middle = y + line / 2;
		gc.drawLine(x, middle, x + bar, middle);
		gc.drawLine(x, middle - DESK_MARK_PX, x, middle + DESK_MARK_PX);
		gc.drawLine(x + bar, middle - DESK_MARK_PX, x + bar, middle + DESK_MARK_PX);
		gc.drawText(length, x + bar + line / 2, y, true);
		gc.drawText(words, x + bar + gc.textExtent(length).x + 3 * line / 2, y, true);
	}
}
