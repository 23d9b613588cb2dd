package org.frisket.run.paper;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Tool;
import org.frisket.material.trials.Settings;
import org.frisket.model.OperationKind;
import org.frisket.page.flow.Figures;
import org.frisket.run.LegWork;
import org.frisket.run.MachineRun;
import org.frisket.toolpath.Leg;
import org.frisket.toolpath.Stage;
import org.frisket.toolpath.Stroke;

/** What is said of a leg of a run. */
public final class LegText {

	private static final String BETWEEN = " · ";

	private final MachineRun run;
	private final int place;
	private final Leg leg;
	private final LegWork work;

	/** @param place of the leg in the run, from 0 */
	public LegText(MachineRun run, int place) {
		this.run = run;
		this.place = place;
		leg = run.run().legs().get(place);
		work = run.work().get(place);
	}

	/** What is done in a stage. */
	public static OperationKind kind(Stage stage) {
		return OperationKind.valueOf(stage.name());
	}

	/** What is done. */
	public OperationKind kind() {
		return kind(leg.stage());
	}

	/** What is done with which tool. */
	public String head() {
		return NLS.bind(Messages.LegText_head, operation(), name(work.tool()));
	}

	/** A tool that nobody has described is called by its kind, in the user's language. */
	public static String name(Tool tool) {
		if (!tool.name().equals(tool.kind().word())) {
			return tool.name();
		}
		return switch (tool.kind()) {
		case BLADE -> Messages.LegText_blade;
		case CREASING_WHEEL -> Messages.LegText_creasingWheel;
		case PERFORATING_BLADE -> Messages.LegText_perforatingBlade;
		case PEN -> Messages.LegText_pen;
		};
	}

	/** What is done. */
	public String operation() {
		return switch (leg.stage()) {
		case DRAW -> Messages.LegText_draw;
		case CREASE -> Messages.LegText_crease;
		case PERFORATE -> Messages.LegText_perforate;
		case KISS_CUT -> Messages.LegText_kissCut;
		case CUT -> Messages.LegText_cut;
		};
	}

	/** Whether the machine waits for somebody before it. */
	boolean stops() {
		return run.run().stopsBefore(place);
	}

	/** What is done by hand before it. */
	String before() {
		if (place == 0) {
			return NLS.bind(Messages.LegText_first, name(work.tool()));
		}
		LegWork last = run.work().get(place - 1);
		return last.tool().id().equals(work.tool().id()) ? Messages.LegText_setAnew
				: NLS.bind(Messages.LegText_change, name(last.tool()), name(work.tool()));
	}

	/** Exposure, pressure, speed and passes. */
	public String settings() {
		Machine machine = run.machine();
		Settings settings = work.settings();
		List<String> parts = new ArrayList<>();
		if (settings.exposure() > 0) {
			parts.add(NLS.bind(Messages.LegText_exposure, Figures.number(settings.exposure(), 2)));
		}
		parts.add(NLS.bind(Messages.LegText_pressure, Figures.setting(settings.pressure(), machine.pressure().unit())));
		parts.add(NLS.bind(Messages.LegText_speed, Figures.setting(settings.speed(), machine.speed().unit())));
		int passes = leg.strokes().stream().mapToInt(Stroke::pass).max().orElse(1);
		parts.add(passes == 1 ? Messages.LegText_onePass : NLS.bind(Messages.LegText_passes, passes));
		return String.join(BETWEEN, parts);
	}

	/** What the settings rest on. */
	public String basis() {
		return switch (work.basis()) {
		case RUN -> Messages.LegText_byRun;
		case TRIALS -> Messages.LegText_byTrials;
		case RULES -> Messages.LegText_byRules;
		};
	}

	String figures() {
		double seconds = run.timeline().spans().stream().filter(span -> span.leg() == place)
				.mapToDouble(span -> span.seconds()).sum();
		double metres = leg.strokes().stream().mapToDouble(Stroke::length).sum() / 1000;
		return String.join(BETWEEN, List.of(NLS.bind(Messages.LegText_strokes, Figures.number(leg.strokes().size(), 0)),
				Figures.metres(metres), Figures.time(seconds)));
	}

	List<String> reasons() {
		return work.reasons();
	}
}
