package org.frisket.ui.sheets.internal.run;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.material.desk.DeskState;
import org.frisket.material.tools.Machine;
import org.frisket.run.RunOptions;
import org.frisket.run.Workshop;
import org.frisket.ui.bench.internal.options.OptionMemory;
import org.osgi.service.prefs.Preferences;

/** What was chosen for runs last: the machine and how it works. It is kept for this desk, not for the job. */
final class RunSetup {

	/** By which the options are remembered. */
	static final String ID = "run"; //$NON-NLS-1$

	private static final String NODE = "org.frisket.ui.sheets"; //$NON-NLS-1$
	private static final String MACHINE = "machine"; //$NON-NLS-1$
	private static final String TRAVEL = "travel"; //$NON-NLS-1$
	private static final String CALM = "calm"; //$NON-NLS-1$

	private RunSetup() {
	}

	private static Preferences node() {
		return InstanceScope.INSTANCE.getNode(NODE);
	}

	static OptionMemory memory() {
		return new OptionMemory(node());
	}

	/** The machine chosen last if the studio still has it, else the one most likely meant. */
	static Workshop workshop(DeskState desk) {
		return desk.machine(node().get(MACHINE, "")).map(machine -> new Workshop(machine, desk)) //$NON-NLS-1$
				.orElseGet(() -> Workshop.of(desk));
	}

	static void keep(Machine machine) {
		node().put(MACHINE, machine.id());
	}

	static void keep(Map<String, String> options) {
		memory().keep(ID, options);
	}

	/** The options of a workshop as they are remembered; those that are no longer to be had are what they are at first. */
	static OptionValues values(Workshop workshop) {
		return OptionValues.of(RunOptions.options(workshop), texts(workshop));
	}

	/** The same as texts, by the name of their option. */
	static Map<String, String> texts(Workshop workshop) {
		List<Option> options = RunOptions.options(workshop);
		Map<String, String> texts = new LinkedHashMap<>();
		for (Option option : options) {
			String text = memory().value(ID, option);
			try {
				OptionValues.of(List.of(option), Map.of(option.name(), text));
				texts.put(option.name(), text);
			} catch (IllegalArgumentException ofAnotherVersion) {
				texts.put(option.name(), option.initial());
			}
		}
		return texts;
	}

	static boolean showsTravel() {
		return node().getBoolean(TRAVEL, true);
	}

	static void showTravel(boolean shown) {
		node().putBoolean(TRAVEL, shown);
	}

	/** Whether the picture goes from stroke to stroke; unless it was chosen here, as the platform has it. */
	static boolean isCalm() {
		return node().getBoolean(CALM, LessMotion.isAsked());
	}

	static void setCalm(boolean calm) {
		node().putBoolean(CALM, calm);
	}
}
