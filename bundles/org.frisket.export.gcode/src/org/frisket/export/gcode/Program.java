package org.frisket.export.gcode;

import java.io.IOException;
import java.io.Writer;
import java.util.List;

import org.frisket.export.Handoff;
import org.frisket.export.OperationInk;
import org.frisket.export.machine.Digits;
import org.frisket.export.machine.MachineFrame;
import org.frisket.export.machine.ToolNumbers;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.options.OptionValues;
import org.frisket.material.tools.Blade;
import org.frisket.material.tools.Machine;
import org.frisket.material.trials.Settings;
import org.frisket.model.OperationKind;
import org.frisket.run.LegWork;
import org.frisket.run.MachineRun;
import org.frisket.toolpath.Leg;
import org.frisket.toolpath.Stroke;
import org.frisket.toolpath.track.Arc;
import org.frisket.toolpath.track.Move;

/**
 * One program, in mm and absolute. Every block says how it moves, and every stroke how fast, so that it can be begun again
 * at any stroke and the studio's own words may change both.
 */
final class Program {

	private final MachineRun run;
	private final MachineFrame frame;
	private final ToolNumbers tools;
	private final String change;
	private final Words up;
	private final Words down;
	private final Words stop;
	private final Words start;
	private final Words end;
	private final boolean dwells;
	private final boolean percent;
	private final int decimals;
	/** Null where arcs are written as chords. */
	private final ArcWords arcs;
	private final double tolerance;
	private final Monitor monitor;
	private final Blocks out;
	private int tool;
	private Settings settings;
	private String feed = "";
	/** Where the tool is, as it was written. */
	private Point at = Point.ORIGIN;
	private String atX = "";
	private String atY = "";

	Program(Handoff handoff, OptionValues options, Monitor monitor, Writer writer) throws IOException {
		this.monitor = monitor;
		run = handoff.run(monitor);
		frame = new MachineFrame(handoff, run);
		tools = new ToolNumbers(run, options.text(GcodeExporter.TOOLS));
		change = options.text(GcodeExporter.CHANGE);
		Machine.Words words = run.machine().words();
		up = Words.of(options, GcodeExporter.UP, words.up());
		down = Words.of(options, GcodeExporter.DOWN, words.down());
		stop = Words.of(options, GcodeExporter.STOP, words.stop());
		start = Words.of(options, GcodeExporter.START, "");
		end = Words.of(options, GcodeExporter.END, "");
		dwells = options.text(GcodeExporter.DWELL).equals("yes");
		percent = options.text(GcodeExporter.PERCENT).equals("yes");
		decimals = options.count(GcodeExporter.DECIMALS);
		tolerance = run.carriage().tolerance();
		String way = options.text(GcodeExporter.ARCS);
		arcs = way.equals("none") || way.equals("machine") && !run.carriage().arcs() ? null
				: new ArcWords(decimals, way.equals("radius"));
		out = new Blocks(writer, options.count(GcodeExporter.NUMBERS));
	}

	void write() throws IOException {
		if (percent) {
			out.percent();
		}
		out.comment("Check blade, depth and zero with the tool lifted first. Never leave the machine alone.");
		out.comment("The maker's manual rules. Keep hands away from whatever moves.");
		// one word of each group that matters, so that nothing is left of another program
		out.put("G17 G21 G40 G90 G94");
		start.put(out, tool, settings);
		lift();
		List<Leg> legs = run.run().legs();
		for (int i = 0; i < legs.size(); i++) {
			leg(i);
			monitor.worked((i + 1.0) / legs.size());
		}
		travel(Point.ORIGIN);
		end.put(out, tool, settings);
		out.put("M2");
		if (percent) {
			out.percent();
		}
	}

	private void leg(int leg) throws IOException {
		LegWork work = leg < run.work().size() ? run.work().get(leg) : null;
		settings = work == null ? null : work.settings();
		boolean other = leg == 0 || tool != tools.of(leg) || run.run().stopsBefore(leg);
		tool = tools.of(leg);
		out.comment(what(leg, work));
		if (other) {
			change(leg);
		}
		Stroke before = null;
		for (Stroke stroke : run.run().legs().get(leg).strokes()) {
			monitor.check();
			boolean isDown = before != null && stroke.continues(before);
			if (before != null && !isDown) {
				lift();
			}
			stroke(stroke, isDown);
			before = stroke;
		}
		if (before != null) {
			lift();
		}
	}

	private String what(int leg, LegWork work) {
		StringBuilder text = new StringBuilder("T").append(tools.of(leg));
		if (work != null) {
			text.append(' ').append(work.tool().name());
		}
		text.append(": ").append(OperationInk.word(
				OperationKind.valueOf(run.run().legs().get(leg).stage().name())));
		if (work != null) {
			String pressure = run.machine().pressure().unit();
			String speed = run.machine().speed().unit();
			text.append(", pressure ").append(Digits.shortest(settings.pressure(), 3)).append(' ').append(pressure)
					.append(", speed ").append(Digits.shortest(settings.speed(), 3)).append(' ').append(speed);
			if (work.tool() instanceof Blade) {
				text.append(", blade out ").append(Digits.shortest(settings.exposure(), 2)).append(" mm");
			}
		}
		return text.toString();
	}

	/** The first tool is put in before the start, unless the machine fetches tools itself. */
	private void change(int leg) throws IOException {
		if (change.equals("tool")) {
			out.put("T" + tool + " M6");
		} else if (change.equals("stop") && run.run().stopsBefore(leg)) {
			stop.put(out, tool, settings);
		} else {
			return;
		}
		// whatever happened meanwhile
		out.put("G17 G21 G90 G94");
		lift();
	}

	private void stroke(Stroke stroke, boolean isDown) throws IOException {
		boolean begun = isDown;
		for (int i = 0; i < stroke.axis().size(); i++) {
			for (Move move : frame.follow(stroke, stroke.axis().get(i), tolerance)) {
				if (!begun) {
					travel(move.start());
					down.put(out, tool, settings);
					dwell(run.carriage().lower());
					// which those words may have set
					feed = "";
					begun = true;
				}
				move(move, stroke.speeds().get(i));
			}
		}
	}

	private void lift() throws IOException {
		up.put(out, tool, settings);
		dwell(run.carriage().lift());
	}

	/** A control goes on as soon as it has told the tool to move. */
	private void dwell(double seconds) throws IOException {
		if (dwells && seconds > 0) {
			out.put("G4 P" + Digits.shortest(seconds, 3));
		}
	}

	private void travel(Point place) throws IOException {
		StringBuilder line = new StringBuilder("G0");
		go(line, place);
		out.put(line);
	}

	private void move(Move move, double speed) throws IOException {
		if (!(move instanceof Arc arc)) {
			straight(move.end(), speed);
		} else if (arcs == null) {
			for (Point place : MachineFrame.chords(arc, tolerance)) {
				straight(place, speed);
			}
		} else {
			int pieces = ArcWords.pieces(arc);
			for (int i = 0; i < pieces; i++) {
				arc((Arc) arc.between(arc.length() * i / pieces, arc.length() * (i + 1) / pieces), speed);
			}
		}
	}

	private void straight(Point place, double speed) throws IOException {
		StringBuilder line = new StringBuilder("G1");
		if (go(line, place)) {
			feed(line, speed);
			out.put(line);
		}
	}

	private void arc(Arc piece, double speed) throws IOException {
		Point from = at;
		StringBuilder line = new StringBuilder(piece.sweep() > 0 ? "G3" : "G2");
		if (!go(line, piece.end())) {
			// an arc back to where it began would be a whole circle
			return;
		}
		if (arcs.isFlat(piece, from, at)) {
			line.setCharAt(1, '1');
		} else {
			arcs.append(line, piece, from, at);
		}
		feed(line, speed);
		out.put(line);
	}

	/** @return whether the place is another one as it is written */
	private boolean go(StringBuilder line, Point place) {
		String x = Digits.of(place.x(), decimals);
		String y = Digits.of(place.y(), decimals);
		line.append(" X").append(x).append(" Y").append(y);
		boolean other = !x.equals(atX) || !y.equals(atY);
		atX = x;
		atY = y;
		at = new Point(Double.parseDouble(x), Double.parseDouble(y));
		return other;
	}

	/** In mm a minute, where it changes. */
	private void feed(StringBuilder line, double mmPerSecond) {
		String next = Digits.shortest(Math.max(0.1, mmPerSecond * 60), 1);
		if (!next.equals(feed)) {
			line.append(" F").append(next);
			feed = next;
		}
	}
}
