package org.frisket.ui.material.internal.machines;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;
import org.frisket.material.calibration.ScaleErrors;
import org.frisket.material.calibration.ScaleSheet;
import org.frisket.material.desk.ScaleAnswers;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Problem;
import org.frisket.model.Job;

/** Finds by how much the axes of a machine are off: a long cross, and what is measured on it. */
final class ScalePart extends Calibration {

	private static final String ERROR = "0.1 mm"; //$NON-NLS-1$
	private final Map<String, CalibrationRow> rows = new LinkedHashMap<>();
	private Machine machine;
	private ScaleSheet sheet;

	/** @param opener lays the cross on a bench @param keeper keeps a machine with other factors */
	ScalePart(Composite parent, Consumer<Job> opener, Consumer<Machine> keeper) {
		super(parent, Messages.ScalePart_title, Messages.ScalePart_steps);
		push(this, Messages.ScalePart_open, () -> {
			if (sheet != null) {
				opener.accept(sheet.job());
			}
		});
		Composite grid = grid();
		add(grid, Messages.ScalePart_across, ScaleAnswers.ACROSS, ""); //$NON-NLS-1$
		add(grid, Messages.ScalePart_down, ScaleAnswers.DOWN, ""); //$NON-NLS-1$
		add(grid, Messages.ScalePart_rightTop, ScaleAnswers.RIGHT_TOP, ""); //$NON-NLS-1$
		add(grid, Messages.ScalePart_rightDown, ScaleAnswers.RIGHT_DOWN, ""); //$NON-NLS-1$
		add(grid, Messages.ScalePart_error, ScaleAnswers.ERROR, ERROR);
		end(Messages.ScalePart_keep, () -> keeper.accept(answers().errors().correct(machine)));
	}

	private void add(Composite grid, String label, String name, String initial) {
		rows.put(name, new CalibrationRow(grid, label, name, initial, this::read));
	}

	void show(Machine shown) {
		boolean same = machine != null && machine.id().equals(shown.id());
		machine = shown;
		try {
			sheet = ScaleSheet.on(shown);
		} catch (IllegalArgumentException e) {
			sheet = null;
			say(e.getMessage(), true, false);
			return;
		}
		if (!same) {
			rows.forEach((name, row) -> {
				if (!name.equals(ScaleAnswers.ERROR)) {
					row.clear();
				}
			});
		}
		read();
	}

	private ScaleAnswers answers() {
		Map<String, String> texts = new LinkedHashMap<>();
		rows.forEach((name, row) -> texts.put(name, row.text()));
		return new ScaleAnswers(sheet, texts);
	}

	private void read() {
		if (sheet == null) {
			return;
		}
		ScaleAnswers answers = answers();
		List<Problem> problems = answers.problems();
		rows.forEach((name, row) -> row.say(said(problems, name)));
		if (answers.isEmpty()) {
			say(NLS.bind(Messages.ScalePart_nothing, number(sheet.width(), 0), number(sheet.height(), 0)), false, false);
		} else if (problems.isEmpty()) {
			say(result(answers.errors()), false, true);
		} else {
			say(said(problems, ScaleAnswers.RESULT), true, false);
		}
	}

	private static String said(List<Problem> problems, String name) {
		return problems.stream().filter(problem -> problem.option().equals(name)).findFirst().map(Problem::message)
				.orElse(""); //$NON-NLS-1$
	}

	private static String result(ScaleErrors found) {
		String factors = NLS.bind(Messages.ScalePart_result,
				new Object[] { number(found.correctX(), 5), number(found.x().error(), 5), number(found.correctY(), 5),
						number(found.y().error(), 5) });
		return found.skew() == null ? factors
				: factors + '\n' + NLS.bind(Messages.ScalePart_skew, number(found.skew().value(), 3),
						number(found.skew().error(), 3));
	}
}
