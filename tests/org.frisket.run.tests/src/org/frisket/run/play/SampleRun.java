package org.frisket.run.play;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Point;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.trials.Settings;
import org.frisket.run.LegWork;
import org.frisket.run.MachineRun;
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
import org.frisket.toolpath.track.Straight;

/** Runs of straight strokes, each from (x, y) to the right; a carriage that takes 1 s to lower and to lift, and 30 s a tool. */
final class SampleRun {

	/** A stroke to be. */
	record Cut(String part, double x, double y, double length) {
	}

	private final List<Leg> legs = new ArrayList<>();
	private final List<LegWork> work = new ArrayList<>();
	private final Map<String, ToolMotion> tools = new HashMap<>();

	SampleRun leg(Stage stage, ToolKind kind, Cut... cuts) {
		String tool = kind.name();
		tools.put(tool, new ToolMotion(tool, new TrailingBlade(0, Math.toRadians(10)), new Drive(10, 1e6, 0.02)));
		List<Stroke> strokes = new ArrayList<>();
		for (Cut cut : cuts) {
			Move move = new Straight(new Point(cut.x(), cut.y()), new Point(cut.x() + cut.length(), cut.y()));
			Contour contour = PathData.parse("M%s,%s h%s".formatted(cut.x(), cut.y(), cut.length())).contours().get(0);
			strokes.add(new Stroke(new Line("line" + legs.size() + '-' + strokes.size(), "ferry", cut.part(), contour, stage,
					tool, 1), 1, List.of(move), List.of(move), List.of(10.0)));
		}
		legs.add(new Leg(stage, tool, strokes));
		work.add(new LegWork(ToolOptions.usual(kind), new Settings(0, 10, 10, 1), List.of(), List.of()));
		return this;
	}

	Playback playback() {
		Carriage carriage = new Carriage(new Drive(100, 1e6, 0.02), 1, 1, 30, new Point(0, 0), false, 0.02);
		Run run = new Run(legs);
		return Playback.of(new MachineRun(Machine.plain(), carriage, run, work, Timeline.of(run, tools, carriage)),
				Monitor.NONE);
	}

	/** A pen draws two strokes of one part, then a blade cuts one of it and two of another. */
	static Playback two() {
		return new SampleRun()
				.leg(Stage.DRAW, ToolKind.PEN, new Cut("a", 0, 0, 20), new Cut("a", 0, 10, 20))
				.leg(Stage.CUT, ToolKind.BLADE, new Cut("a", 0, 20, 40), new Cut("b", 0, 30, 40), new Cut("b", 0, 40, 40))
				.playback();
	}
}
