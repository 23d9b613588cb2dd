package org.frisket.material.desk;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.material.advice.RulesOfThumb;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.MachineOptions;
import org.frisket.material.tools.Problem;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.trials.SettingsStore;

/**
 * Something of the studio that a form describes: a machine, a tool, or its rules of thumb.
 *
 * @param kind  of a tool; null for what is none
 * @param id    empty for the rules, of which there is one set
 * @param texts by the names of the options
 */
public record Profile(What what, ToolKind kind, String id, Map<String, String> texts) {

	/** What a profile is of. */
	public enum What {
		MACHINE, TOOL, RULES
	}

	public Profile {
		texts = Map.copyOf(texts);
	}

	public static Profile of(Machine machine) {
		return new Profile(What.MACHINE, null, machine.id(), MachineOptions.texts(machine));
	}

	public static Profile of(Tool tool) {
		return new Profile(What.TOOL, tool.kind(), tool.id(), ToolOptions.texts(tool));
	}

	/** @param texts of the rules that the studio has changed */
	public static Profile ofRules(Map<String, String> texts) {
		return new Profile(What.RULES, null, "", RulesOfThumb.of(texts).texts());
	}

	/** The profile as the studio has it now; as it is here if the studio has it no more. */
	public Profile in(DeskState state) {
		return switch (what) {
		case MACHINE -> state.machines().stream().filter(each -> each.id().equals(id)).findFirst().map(Profile::of)
				.orElse(this);
		case TOOL -> state.tools().stream().filter(each -> each.id().equals(id)).findFirst().map(Profile::of).orElse(this);
		case RULES -> ofRules(state.rules());
		};
	}

	/** Whether the studio has it. */
	public boolean isIn(DeskState state) {
		return switch (what) {
		case MACHINE -> state.machines().stream().anyMatch(each -> each.id().equals(id));
		case TOOL -> state.tools().stream().anyMatch(each -> each.id().equals(id));
		case RULES -> true;
		};
	}

	/** What can be set of it. */
	public List<Option> options() {
		return switch (what) {
		case MACHINE -> MachineOptions.options();
		case TOOL -> ToolOptions.of(kind);
		case RULES -> RulesOfThumb.options();
		};
	}

	/** The same with other texts. */
	public Profile with(Map<String, String> others) {
		return new Profile(what, kind, id, others);
	}

	/** Whether both are of the same thing. */
	public boolean isSame(Profile other) {
		return what == other.what && id.equals(other.id);
	}

	/** All that is wrong with the texts; empty if they can be kept. */
	public List<Problem> problems() {
		return switch (what) {
		case MACHINE -> MachineOptions.problems(texts);
		case TOOL -> ToolOptions.problems(kind, texts);
		case RULES -> rulesProblems();
		};
	}

	private List<Problem> rulesProblems() {
		List<Problem> problems = new ArrayList<>();
		for (Option option : options()) {
			try {
				OptionValues.of(List.of(option), Map.of(option.name(), texts.getOrDefault(option.name(), option.initial())));
			} catch (IllegalArgumentException e) {
				problems.add(new Problem(option.name(), e.getMessage()));
			}
		}
		return problems;
	}

	/** Takes it from the studio; there is always one set of rules. */
	public void remove(SettingsStore settings) throws SQLException {
		switch (what) {
		case MACHINE -> settings.removeMachine(id);
		case TOOL -> settings.removeTool(id);
		case RULES -> throw new IllegalStateException("rules cannot be taken away");
		}
	}

	/** @throws IllegalArgumentException if there are {@linkplain #problems problems} */
	public void keep(SettingsStore settings) throws SQLException {
		switch (what) {
		case MACHINE -> settings.save(MachineOptions.machine(id, texts));
		case TOOL -> settings.save(ToolOptions.tool(kind, id, texts));
		case RULES -> {
			RulesOfThumb.of(texts);
			settings.saveRules(texts);
		}
		}
	}
}
