package org.frisket.export.hpgl;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.OptionalDouble;

import org.eclipse.osgi.util.NLS;
import org.frisket.export.Handoff;
import org.frisket.export.machine.Ascii;
import org.frisket.export.machine.Digits;
import org.frisket.export.machine.MachineFrame;
import org.frisket.export.machine.ToolNumbers;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.options.OptionValues;
import org.frisket.material.tools.Machine;
import org.frisket.run.LegWork;
import org.frisket.run.MachineRun;
import org.frisket.toolpath.Leg;
import org.frisket.toolpath.Stroke;
import org.frisket.toolpath.track.Arc;
import org.frisket.toolpath.track.Move;

/** One plot, in absolute plotter units. */
final class Plot {

	/** Coordinates that any HP-GL/2 device has to take lie between -2^23 and 2^23 (from memory). */
	private static final long LARGEST = 1 << 23;

	private final MachineRun run;
	private final MachineFrame frame;
	private final Machine.Plotting plotting;
	private final ToolNumbers pens;
	private final int onlyPen;
	private final boolean stops;
	private final boolean tellsSpeed;
	private final boolean tellsForce;
	private final boolean comments;
	private final ArcWriter arcs;
	private final double tolerance;
	private final Monitor monitor;
	private final Instructions out;
	/** What the pen, the speed and the force were last set to; empty for not yet. */
	private String pen = "";
	private String speed = "";
	private String force = "";
	private long x;
	private long y;

	Plot(Handoff handoff, OptionValues options, Monitor monitor, Writer out) throws IOException {
		this.monitor = monitor;
		run = handoff.run(monitor);
		frame = new MachineFrame(handoff, run);
		plotting = run.machine().plotting();
		pens = new ToolNumbers(run, options.text(HpglExporter.PENS));
		onlyPen = options.count(HpglExporter.PEN);
		stops = options.text(HpglExporter.CHANGE).equals("not-ready");
		tellsSpeed = options.text(HpglExporter.SPEED).equals("yes");
		tellsForce = options.text(HpglExporter.FORCE).equals("yes");
		comments = options.text(HpglExporter.COMMENTS).equals("yes");
		tolerance = run.carriage().tolerance();
		arcs = options.text(HpglExporter.ARCS).equals("yes") ? new ArcWriter(tolerance * plotting.unitsPerMm()) : null;
		this.out = new Instructions(out, options.count(HpglExporter.LINE), options.count(HpglExporter.COORDINATES));
	}

	void write() throws IOException {
		if (onlyPen > 0 && !pens.all().contains(onlyPen)) {
			throw new IOException(NLS.bind(Messages.Plot_noSuchPen, onlyPen,
					pens.all().stream().sorted().map(String::valueOf).reduce((a, b) -> a + ", " + b).orElse("-")));
		}
		out.put("IN");
		if (comments) {
			comment("Check blade and holder first. Never leave the machine alone. The maker's manual rules.");
		}
		out.put("PA");
		out.put("PU");
		List<Leg> legs = run.run().legs();
		boolean begun = false;
		for (int i = 0; i < legs.size(); i++) {
			if (onlyPen == 0 || pens.of(i) == onlyPen) {
				// alone in its file a pen is put in before the start
				leg(i, begun && onlyPen == 0 && run.run().stopsBefore(i));
				begun = true;
			}
			monitor.worked((i + 1.0) / legs.size());
		}
		out.put("PU0,0");
		out.put("SP0");
		out.end();
	}

	/** CO is no part of older HP-GL. A quotation mark would end it. */
	private void comment(String text) throws IOException {
		out.put("CO\"" + text.replace('"', '\'') + "\"");
	}

	private void leg(int leg, boolean stop) throws IOException {
		if (stop && stops) {
			// not ready until somebody says so at the machine (HP-GL/2's technical instructions, from memory)
			out.put("NR");
		}
		LegWork work = leg < run.work().size() ? run.work().get(leg) : null;
		if (comments && work != null && !pen.equals("SP" + pens.of(leg))) {
			String name = Ascii.of(work.tool().name());
			comment("Pen " + pens.of(leg) + ": " + name.substring(0, Math.min(40, name.length())));
		}
		pen = change(pen, "SP" + pens.of(leg));
		if (work != null) {
			setUp(work);
		}
		Stroke before = null;
		for (Stroke stroke : run.run().legs().get(leg).strokes()) {
			monitor.check();
			boolean down = before != null && stroke.continues(before);
			if (before != null && !down) {
				out.put("PU");
			}
			stroke(stroke, down);
			before = stroke;
		}
		if (before != null) {
			out.put("PU");
		}
	}

	private void setUp(LegWork work) throws IOException {
		OptionalDouble mmPerSecond = run.machine().speed().meaning(work.settings().speed());
		if (tellsSpeed && mmPerSecond.isPresent()) {
			// in cm/s
			speed = change(speed, "VS" + Digits.shortest(Math.max(0.01, mmPerSecond.getAsDouble() / 10), 2));
		}
		if (tellsForce) {
			force = change(force, "FS" + Math.round(work.settings().pressure()));
		}
	}

	private String change(String now, String instruction) throws IOException {
		if (!now.equals(instruction)) {
			out.put(instruction);
		}
		return instruction;
	}

	private void stroke(Stroke stroke, boolean isDown) throws IOException {
		List<Move> axis = frame.axis(stroke, tolerance);
		boolean down = isDown;
		if (!down) {
			go(stroke, axis.get(0).start());
			out.put("PU" + x + "," + y);
		}
		for (Move move : axis) {
			if (arcs != null && move instanceof Arc arc) {
				if (!down) {
					out.put("PD");
				}
				down = true;
				arc(stroke, arc);
			} else {
				for (Point end : move instanceof Arc arc ? MachineFrame.chords(arc, tolerance) : List.of(move.end())) {
					down |= draw(stroke, end);
				}
			}
		}
		if (!down) {
			// all of it lies within one unit
			out.draw(x, y);
		}
	}

	private void arc(Stroke stroke, Arc arc) throws IOException {
		long endX = units(arc.end().x());
		long endY = units(arc.end().y());
		long centreX = units(arc.centre().x());
		long centreY = units(arc.centre().y());
		if (Math.max(Math.abs(centreX), Math.abs(centreY)) > LARGEST || arcs.isFlat(x, y, endX, endY, arc.sweep())) {
			for (Point end : MachineFrame.chords(arc, tolerance)) {
				draw(stroke, end);
			}
			return;
		}
		out.put(arcs.instruction(centreX, centreY, x, y, endX, endY, arc.sweep()));
		// the plotter is where the rounded circle took it: the next place puts it right
		go(stroke, arc.end());
		out.draw(x, y);
	}

	/** @return whether it went anywhere */
	private boolean draw(Stroke stroke, Point end) throws IOException {
		long fromX = x;
		long fromY = y;
		go(stroke, end);
		if (x == fromX && y == fromY) {
			return false;
		}
		out.draw(x, y);
		return true;
	}

	private void go(Stroke stroke, Point place) throws IOException {
		x = units(place.x());
		y = units(place.y());
		if (Math.abs(x) > LARGEST || Math.abs(y) > LARGEST) {
			throw new IOException(NLS.bind(Messages.Plot_tooFar, frame.part(stroke), LARGEST));
		}
	}

	private long units(double mm) {
		return plotting.units(mm);
	}
}
