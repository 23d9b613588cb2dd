package org.frisket.run.paper;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.OutlineBuilder;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Transform;
import org.frisket.model.OperationKind;
import org.frisket.page.Ink;
import org.frisket.page.PagePainter;
import org.frisket.page.Words;
import org.frisket.page.flow.Block;
import org.frisket.page.flow.Column;
import org.frisket.page.flow.Figures;
import org.frisket.page.flow.ScaleBar;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.run.MachineRun;
import org.frisket.toolpath.Leg;
import org.frisket.toolpath.Stage;
import org.frisket.toolpath.Stroke;
import org.frisket.toolpath.Timeline;
import org.frisket.toolpath.track.Arc;
import org.frisket.toolpath.track.Move;

/** The sheet made smaller, with the lines of its run, where each leg begins and where the machine does. */
final class SheetPicture {

	private static final double TALLEST = 125;
	private static final double FOOT = 9;
	private static final double DISC = 2.1;
	private static final double DIGITS = 1.7;
	private static final double MARK = 2.4;
	private static final double PRINTED = 0.88;
	private static final double STEP = Math.PI / 16;
	private static final Ink EDGE = new Ink("#000000", 0.25, List.of());
	private static final Ink TRAVEL = new Ink("#777777", 0.08, List.of(0.25, 0.75));

	private final MachineRun run;
	private final PreparedJob content;
	private final Bounds sheet;
	private final ScaleBar bar;
	private final double scale;
	private final double left;

	/** @param sheet what is shown, in mm in the frame of the run */
	SheetPicture(MachineRun run, PreparedJob content, Bounds sheet, Figures figures, Column column) {
		this.run = run;
		this.content = content;
		this.sheet = sheet;
		scale = Math.min(column.width() / sheet.width(), TALLEST / sheet.height());
		bar = new ScaleBar(scale, figures);
		left = column.left() + (column.width() - sheet.width() * scale) / 2;
	}

	/** mm of paper to one of the sheet. */
	double scale() {
		return scale;
	}

	Block block() {
		return new Block(sheet.height() * scale + FOOT, List.of(bar.scaleText(), bar.text()), this::paint);
	}

	private void paint(PagePainter painter, double top) throws IOException {
		Transform place = new Transform(scale, 0, 0, scale, left - sheet.minX() * scale, top - sheet.minY() * scale);
		painted(painter, place);
		painter.stroke(Column.rectangle(left, top, sheet.width() * scale, sheet.height() * scale), EDGE);
		painter.stroke(travels().transformed(place), TRAVEL);
		Map<Stage, List<Contour>> lines = new EnumMap<>(Stage.class);
		for (Leg leg : run.run().legs()) {
			for (Stroke stroke : leg.strokes()) {
				if (stroke.pass() == 1) {
					lines.computeIfAbsent(leg.stage(), key -> new ArrayList<>()).add(contour(stroke));
				}
			}
		}
		for (Map.Entry<Stage, List<Contour>> each : lines.entrySet()) {
			painter.stroke(new Outline(each.getValue()).transformed(place), Ink.of(LegText.kind(each.getKey())));
		}
		start(painter, place);
		numbers(painter, place);
		bar.paint(painter, left, top + sheet.height() * scale + 2);
	}

	/** What is on the sheet before the machine begins. */
	private void painted(PagePainter painter, Transform place) throws IOException {
		List<PreparedElement> printed = content.layers().stream().flatMap(layer -> layer.shown().stream())
				.filter(element -> element.has(OperationKind.PRINT)).toList();
		for (PreparedElement element : printed) {
			painter.fill(element.region().transformed(place).toOutline(), PRINTED);
		}
	}

	private Outline travels() {
		List<Contour> travels = new ArrayList<>();
		for (Timeline.Span span : run.timeline().spans()) {
			if (span.kind() == Timeline.Kind.TRAVEL && !span.start().equals(span.end())) {
				travels.add(Contour.open(List.<Segment>of(new Line(span.start(), span.end()))));
			}
		}
		return new Outline(travels);
	}

	private static Contour contour(Stroke stroke) {
		OutlineBuilder pen = new OutlineBuilder();
		pen.moveTo(stroke.tip().get(0).start());
		for (Move move : stroke.tip()) {
			if (move instanceof Arc arc) {
				int chords = (int) Math.ceil(Math.abs(arc.sweep()) / STEP);
				for (int i = 1; i < chords; i++) {
					pen.lineTo(arc.at(arc.length() * i / chords));
				}
			}
			pen.lineTo(move.end());
		}
		return pen.build().contours().get(0);
	}

	/** A corner of the sheet, or wherever the machine is sent to first. */
	private void start(PagePainter painter, Transform place) throws IOException {
		Point home = place.apply(run.carriage().home());
		double x = Math.max(left, Math.min(left + sheet.width() * scale, home.x()));
		double top = place.apply(new Point(sheet.minX(), sheet.minY())).y();
		double y = Math.max(top, Math.min(top + sheet.height() * scale, home.y()));
		double right = x > left + sheet.width() * scale / 2 ? -1 : 1;
		double down = y > top + sheet.height() * scale / 2 ? -1 : 1;
		painter.fill(Outline.of(Contour.polygon(List.of(new Point(x, y), new Point(x + right * MARK, y),
				new Point(x, y + down * MARK)))), 0);
		String word = Messages.SheetPicture_start;
		double width = Words.width(word, DIGITS);
		painter.words(word, right > 0 ? x + MARK + 0.8 : x - MARK - 0.8 - width,
				down > 0 ? y + DIGITS + 0.6 : y - 0.6, DIGITS, width + 1, 0);
	}

	private void numbers(PagePainter painter, Transform place) throws IOException {
		List<Point> taken = new ArrayList<>();
		for (int i = 0; i < run.run().legs().size(); i++) {
			Leg leg = run.run().legs().get(i);
			if (leg.strokes().isEmpty()) {
				continue;
			}
			Point at = place.apply(leg.strokes().get(0).start());
			while (isTaken(at, taken)) {
				at = new Point(at.x() + 2 * DISC, at.y());
			}
			taken.add(at);
			disc(painter, at, i + 1, Ink.of(LegText.kind(leg.stage())));
		}
	}

	private static boolean isTaken(Point at, List<Point> taken) {
		return taken.stream().anyMatch(other -> Math.hypot(other.x() - at.x(), other.y() - at.y()) < 2 * DISC - 1e-6);
	}

	/** A number as the list has it. */
	static void disc(PagePainter painter, Point centre, int number, Ink ink) throws IOException {
		OutlineBuilder pen = new OutlineBuilder();
		pen.moveTo(new Point(centre.x() + DISC, centre.y()));
		pen.arcTo(DISC, DISC, 0, false, true, new Point(centre.x() - DISC, centre.y()));
		pen.arcTo(DISC, DISC, 0, false, true, new Point(centre.x() + DISC, centre.y()));
		pen.close();
		Outline circle = pen.build();
		painter.fill(circle, 1);
		painter.stroke(circle, new Ink(ink.colour(), 0.25, List.of()));
		String text = String.valueOf(number);
		double width = Words.width(text, DIGITS);
		painter.words(text, centre.x() - width / 2, centre.y() + DIGITS / 2, DIGITS, width + 0.1, 0);
	}
}
