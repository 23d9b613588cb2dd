package org.frisket.material.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.frisket.material.calibration.ScaleErrors;
import org.frisket.material.calibration.ScaleReading;
import org.frisket.material.calibration.ScaleSheet;
import org.frisket.material.tools.Problem;

/**
 * What somebody measured on a scale cross, as it is typed.
 *
 * @param texts by the names below; those of the diagonals may be empty
 */
public record ScaleAnswers(ScaleSheet sheet, Map<String, String> texts) {

	public static final String ACROSS = "across";
	public static final String DOWN = "down";
	public static final String RIGHT_TOP = "right-top";
	public static final String RIGHT_DOWN = "right-down";
	/** Of one measurement. */
	public static final String ERROR = "error";
	/** Where a problem with all of it together stands. */
	public static final String RESULT = "result";
	private static final String MM = "mm";
	private static final List<String> NAMES = List.of(ACROSS, DOWN, RIGHT_TOP, RIGHT_DOWN, ERROR);

	public ScaleAnswers {
		texts = Map.copyOf(texts);
	}

	/** Whether nothing was measured yet. */
	public boolean isEmpty() {
		return text(ACROSS).isBlank() && text(DOWN).isBlank();
	}

	private String text(String name) {
		return texts.getOrDefault(name, "");
	}

	private double number(String name) {
		boolean optional = name.equals(RIGHT_TOP) || name.equals(RIGHT_DOWN);
		double number = optional && text(name).isBlank() ? 0 : TypedNumber.parse(text(name), MM);
		if (!optional && !(number > 0) || number < 0) {
			throw new IllegalArgumentException(Messages.ScaleAnswers_positive);
		}
		return number;
	}

	/** All that is wrong, each at its place; empty if there is a result, or nothing was measured yet. */
	public List<Problem> problems() {
		List<Problem> problems = new ArrayList<>();
		if (isEmpty()) {
			return problems;
		}
		for (String name : NAMES) {
			try {
				number(name);
			} catch (IllegalArgumentException e) {
				problems.add(new Problem(name, e.getMessage()));
			}
		}
		if (problems.isEmpty()) {
			try {
				errors();
			} catch (IllegalArgumentException e) {
				problems.add(new Problem(RESULT, e.getMessage()));
			}
		}
		return problems;
	}

	/**
	 * How the axes are off.
	 *
	 * @throws IllegalArgumentException if it cannot be told, with the reason
	 */
	public ScaleErrors errors() {
		return new ScaleReading(number(ACROSS), number(DOWN), number(RIGHT_TOP), number(RIGHT_DOWN), number(ERROR))
				.against(sheet);
	}
}
