package org.frisket.run;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.material.advice.Advice;
import org.frisket.material.advice.SettingsAdvisor;
import org.frisket.material.advice.Work;
import org.frisket.material.StockFamily;
import org.frisket.material.tools.Blade;
import org.frisket.material.tools.Tool;
import org.frisket.material.trials.StockFacts;
import org.frisket.model.Jobs;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;
import org.frisket.toolpath.Carriage;
import org.frisket.toolpath.Leg;
import org.frisket.toolpath.Line;
import org.frisket.toolpath.Run;
import org.frisket.toolpath.RunChoices;
import org.frisket.toolpath.RunPlanner;
import org.frisket.toolpath.Stage;
import org.frisket.toolpath.Timeline;
import org.frisket.toolpath.ToolMotion;
import org.frisket.toolpath.blade.TrailingBlade;
import org.frisket.toolpath.motion.Drive;

/** Makes the run of what lies on a sheet. */
public final class RunMaker {

	private RunMaker() {
	}

	/**
	 * @param sheet   what is to be done, in mm from the sheet's upper left corner
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public static MachineRun of(PreparedJob sheet, Workshop workshop, RunChoices choices, Monitor monitor) {
		Drive drive = new Drive(100, 1000, 0.02);
		Carriage carriage = new Carriage(new Drive(300, 2000, 0.02), 0.1, 0.1, 30, new Point(0, 0), false, 0.02);
		List<Line> lines = new ArrayList<>();
		Map<String, Tool> tools = new HashMap<>();
		Map<String, ToolMotion> motions = new HashMap<>();
		for (PreparedLayer layer : sheet.layers()) {
			for (PreparedElement element : layer.shown()) {
				for (Operation operation : element.operations()) {
					if (operation.getKind() == OperationKind.PRINT) {
						continue;
					}
					Tool tool = workshop.tool(operation);
					tools.put(tool.id(), tool);
					motions.put(tool.id(), new ToolMotion(tool.id(), new TrailingBlade(
							tool instanceof Blade blade ? blade.offset() : 0, Math.toRadians(10)), drive));
					List<Contour> contours = new ArrayList<>(element.dashes(operation));
					if (contours.isEmpty()) {
						contours.addAll(element.region().contours());
						contours.addAll(element.lines());
					}
					for (Contour contour : contours) {
						lines.add(new Line(element.element().getId(), Jobs.jobOf(element.element()).getId(),
								element.element().getId(), contour, stage(operation.getKind()), tool.id(),
								operation.getPasses()));
					}
				}
			}
		}
		Run run = RunPlanner.plan(lines, motions, carriage, choices, monitor);
		SettingsAdvisor advisor = workshop.desk().advisor(workshop.desk().trials());
		List<LegWork> work = new ArrayList<>();
		for (Leg leg : run.legs()) {
			Tool tool = tools.get(leg.tool());
			Advice advice = advisor.advise(new Work(StockFacts.of(StockFamily.PAPER, 0, 0), workshop.machine(), tool,
					kind(leg.stage())));
			work.add(new LegWork(tool, advice.settings(), advice.reasons(), advice.cautions()));
		}
		return new MachineRun(workshop.machine(), carriage, run, work, Timeline.of(run, motions, carriage));
	}

	private static Stage stage(OperationKind kind) {
		return Stage.valueOf(kind.name());
	}

	private static OperationKind kind(Stage stage) {
		return OperationKind.valueOf(stage.name());
	}
}
