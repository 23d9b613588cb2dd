package org.frisket.export.tests;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.export.Handoff;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Point;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.MachineOptions;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.trials.Settings;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.run.LegWork;
import org.frisket.run.MachineRun;
import org.frisket.testkit.SampleJobs;
import org.frisket.toolpath.Carriage;
import org.frisket.toolpath.Leg;
import org.frisket.toolpath.Line;
import org.frisket.toolpath.Run;
import org.frisket.toolpath.Stage;
import org.frisket.toolpath.Stroke;
import org.frisket.toolpath.Timeline;
import org.frisket.toolpath.ToolMotion;
import org.frisket.toolpath.blade.TrailingBlade;
import org.frisket.toolpath.motion.Drive;
import org.frisket.toolpath.track.Move;
import org.frisket.toolpath.track.Track;
import org.frisket.toolpath.track.Tracks;

/** Runs made by hand, leg by leg, so that a test knows what is in them. */
public final class Runs {

	/** A machine somebody has described, of 600 by 400 mm; its speed is in mm/s. */
	public static final Map<String, String> DESK = Map.of("name", "Desk plotter", "width", "600mm", "height", "400mm",
			"speed-unit", "mm/s", "speed-least", "1", "speed-most", "400", "speed-least-means", "1", "speed-most-means",
			"400");
	/** The lower left corner of a sheet that covers all of it. */
	public static final Point LOWER_LEFT = new Point(0, 400);

	private final Machine machine;
	private final Carriage carriage;
	private final Map<String, ToolMotion> motions = new HashMap<>();
	private final List<Leg> legs = new ArrayList<>();
	private final List<LegWork> works = new ArrayList<>();

	public Runs(Machine machine, Point home, boolean arcs) {
		this.machine = machine;
		carriage = new Carriage(new Drive(300, 2000, 0.02), 0.1, 0.2, 30, home, arcs, 0.02);
	}

	/** On the machine somebody has described, with zero in the lower left. */
	public static Runs onDesk(boolean arcs) {
		return new Runs(desk(Map.of()), LOWER_LEFT, arcs);
	}

	public static Machine desk(Map<String, String> otherwise) {
		Map<String, String> texts = new HashMap<>(DESK);
		texts.putAll(otherwise);
		return MachineOptions.machine("desk", texts);
	}

	public static Tool pen() {
		return ToolOptions.tool(ToolKind.PEN, "pen", Map.of("name", "Füller (fein)"));
	}

	public static Tool blade() {
		return ToolOptions.tool(ToolKind.BLADE, "blade", Map.of("name", "Blade"));
	}

	/** @param offset of the axis, 0 for none @param speed in mm/s @param pathData of the lines, each contour a stroke */
	public Runs leg(Stage stage, Tool tool, double offset, double speed, String pathData) {
		return leg(stage, tool, offset, speed, pathData, 1);
	}

	/** @param passes over each line, one after the other */
	public Runs leg(Stage stage, Tool tool, double offset, double speed, String pathData, int passes) {
		ToolMotion motion = new ToolMotion(tool.id(), new TrailingBlade(offset, Math.toRadians(10)),
				new Drive(speed, 1000, 0.02));
		motions.put(tool.id(), motion);
		List<Stroke> strokes = new ArrayList<>();
		for (Contour contour : PathData.parse(pathData).contours()) {
			Line line = new Line("shape", "job", "shape", contour, stage, tool.id(), passes);
			Track track = carriage.arcs() ? Tracks.arcs(contour, carriage.tolerance())
					: Tracks.chords(contour, carriage.tolerance());
			List<Move> axis = motion.blade().lead(track);
			for (int pass = 1; pass <= passes; pass++) {
				strokes.add(new Stroke(line, pass, track.moves(), axis, Collections.nCopies(axis.size(), speed)));
			}
		}
		return leg(stage, tool, speed, strokes);
	}

	public Runs leg(Stage stage, Tool tool, double speed, List<Stroke> strokes) {
		motions.putIfAbsent(tool.id(), new ToolMotion(tool.id(), new TrailingBlade(0, 0), new Drive(speed, 1000, 0.02)));
		legs.add(new Leg(stage, tool.id(), strokes));
		works.add(new LegWork(tool, new Settings(0.3, 12, speed, 1), List.of(), List.of()));
		return this;
	}

	public MachineRun run() {
		Run run = new Run(legs);
		return new MachineRun(machine, carriage, run, works, Timeline.of(run, motions, carriage));
	}

	/** With a job beside it that is empty: exporters of runs look at the run. */
	public Handoff handoff() {
		return Handoff.of(SampleJobs.prepared(Jobs.create("job", "Harbour Lane"))).with(run());
	}

	/** Of a shape that is named, as the suite itself plans it. */
	public static Handoff planned(String pathData, OperationKind kind) {
		return Handoff.of(SampleJobs.prepared(SampleJobs.outline(pathData, kind)));
	}

	/** Of the axis of all strokes, in mm. */
	public static double axisLength(Handoff handoff) {
		return handoff.run(Monitor.NONE).run().strokes().flatMap(stroke -> stroke.axis().stream())
				.mapToDouble(Move::length).sum();
	}
}
