package org.frisket.material.tools;

import java.util.List;
import java.util.Map;

import org.frisket.geometry.options.Option;

/** What to look up in a machine's manual, question by question; whoever asks them needs to know nothing else. */
public final class ManualQuestions {

	/**
	 * One question.
	 *
	 * @param words   what is asked
	 * @param why     what the answer is good for
	 * @param where   in which part of a manual it is found, or how it is found out without one
	 * @param options what the answer sets
	 */
	public record Question(String words, String why, String where, List<Option> options) {

		/** What is wrong with the answers to this question, as far as it can be seen from them alone. */
		public List<Problem> problems(Map<String, String> answers) {
			return Checks.each(options, answers);
		}
	}

	private static final List<Question> ALL = List.of(
			new Question(Messages.ManualQuestions_name, Messages.ManualQuestions_nameWhy,
					Messages.ManualQuestions_nameWhere, List.of(MachineOptions.NAME)),
			new Question(Messages.ManualQuestions_process, Messages.ManualQuestions_processWhy,
					Messages.ManualQuestions_processWhere, List.of(MachineOptions.PROCESS)),
			new Question(Messages.ManualQuestions_area, Messages.ManualQuestions_areaWhy,
					Messages.ManualQuestions_areaWhere, List.of(MachineOptions.WIDTH, MachineOptions.HEIGHT)),
			new Question(Messages.ManualQuestions_margins, Messages.ManualQuestions_marginsWhy,
					Messages.ManualQuestions_marginsWhere,
					List.of(MachineOptions.LEFT, MachineOptions.TOP, MachineOptions.RIGHT, MachineOptions.BOTTOM)),
			new Question(Messages.ManualQuestions_speed, Messages.ManualQuestions_speedWhy,
					Messages.ManualQuestions_speedWhere, MachineOptions.SPEED.all()),
			new Question(Messages.ManualQuestions_pressure, Messages.ManualQuestions_pressureWhy,
					Messages.ManualQuestions_pressureWhere, MachineOptions.PRESSURE.all()),
			new Question(Messages.ManualQuestions_passes, Messages.ManualQuestions_passesWhy,
					Messages.ManualQuestions_passesWhere, List.of(MachineOptions.PASSES)),
			new Question(Messages.ManualQuestions_units, Messages.ManualQuestions_unitsWhy,
					Messages.ManualQuestions_unitsWhere, List.of(MachineOptions.UNITS)),
			new Question(Messages.ManualQuestions_axes, Messages.ManualQuestions_axesWhy,
					Messages.ManualQuestions_axesWhere,
					List.of(MachineOptions.X, MachineOptions.Y, MachineOptions.ORIGIN, MachineOptions.ZERO)),
			new Question(Messages.ManualQuestions_scale, Messages.ManualQuestions_scaleWhy,
					Messages.ManualQuestions_scaleWhere, List.of(MachineOptions.SCALE_X, MachineOptions.SCALE_Y)),
			new Question(Messages.ManualQuestions_motion, Messages.ManualQuestions_motionWhy,
					Messages.ManualQuestions_motionWhere, MotionOptions.MOVES),
			new Question(Messages.ManualQuestions_words, Messages.ManualQuestions_wordsWhy,
					Messages.ManualQuestions_wordsWhere, MotionOptions.WORDS),
			new Question(Messages.ManualQuestions_marks, Messages.ManualQuestions_marksWhy,
					Messages.ManualQuestions_marksWhere, List.of(MachineOptions.MARKS)));

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
