package org.frisket.material.tools;

import java.util.List;
import java.util.Map;

import org.frisket.geometry.options.Option;

/** What to look up in a machine's manual, question by question; whoever asks them needs to know nothing else. */
public final class ManualQuestions {

	/**
	 * One question.
	 *
	 * @param words   what is asked and where it is found
	 * @param options what the answer sets
	 */
	public record Question(String words, List<Option> options) {

		/** What is wrong with the answers to this question, as far as it can be seen from them alone. */
		public List<Problem> problems(Map<String, String> answers) {
			return Checks.each(options, answers);
		}
	}

	private static final List<Question> ALL = List.of(
			new Question(Messages.ManualQuestions_name, List.of(MachineOptions.NAME)),
			new Question(Messages.ManualQuestions_process, List.of(MachineOptions.PROCESS)),
			new Question(Messages.ManualQuestions_area, List.of(MachineOptions.WIDTH, MachineOptions.HEIGHT)),
			new Question(Messages.ManualQuestions_margins,
					List.of(MachineOptions.LEFT, MachineOptions.TOP, MachineOptions.RIGHT, MachineOptions.BOTTOM)),
			new Question(Messages.ManualQuestions_speed, MachineOptions.SPEED.all()),
			new Question(Messages.ManualQuestions_pressure, MachineOptions.PRESSURE.all()),
			new Question(Messages.ManualQuestions_passes, List.of(MachineOptions.PASSES)),
			new Question(Messages.ManualQuestions_units, List.of(MachineOptions.UNITS)),
			new Question(Messages.ManualQuestions_axes,
					List.of(MachineOptions.X, MachineOptions.Y, MachineOptions.ORIGIN)),
			new Question(Messages.ManualQuestions_marks, List.of(MachineOptions.MARKS)));

	private ManualQuestions() {
	}

	/** The questions in the order they are asked; together they set every option of a machine once. */
	public static List<Question> all() {
		return ALL;
	}

	/** What is wrong with all answers taken together; empty if a machine can be made of them. */
	public static List<Problem> problems(Map<String, String> answers) {
		return MachineOptions.problems(answers);
	}
}
