package org.frisket.ui.print.internal.output;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.frisket.export.plan.SheetChoice;
import org.frisket.material.sizes.Format;
import org.frisket.material.sizes.Formats;
import org.frisket.model.Job;

/** Which sheets of a job are printed and cut; of a job without sheets, how large the one is on which it is put. */
final class SheetsChosen {

	/** Of a sheet, in mm. */
	record Size(double width, double height) {
	}

	private static final int ALL = 0;
	private static final int NUMBERS_PX = 100;

	private final Job job;
	private final Combo which;
	/** Of the sheets; the size of the one of a job that has none. */
	private final Text numbers;

	/** @param parent of three columns @param first number of the sheet that is chosen already; 0 for all */
	SheetsChosen(Composite parent, Job job, int first, Runnable changed) {
		this.job = job;
		new Label(parent, SWT.NONE).setText(Messages.SheetsChosen_sheets);
		which = new Combo(parent, SWT.READ_ONLY);
		which.setData("which"); //$NON-NLS-1$
		int count = job.getSheets().size();
		if (count == 0) {
			which.setItems(Messages.SheetsChosen_bare);
		} else {
			which.setItems(count == 1 ? Messages.SheetsChosen_one : NLS.bind(Messages.SheetsChosen_all, count),
					Messages.SheetsChosen_some);
		}
		which.select(first > 0 && count > 1 ? 1 : ALL);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(which);
		numbers = new Text(parent, SWT.BORDER);
		if (count == 0) {
			numbers.setData("size"); //$NON-NLS-1$
			numbers.setMessage(Messages.SheetsChosen_size);
			numbers.setToolTipText(Messages.SheetsChosen_sizeTip);
		} else {
			numbers.setData("numbers"); //$NON-NLS-1$
			numbers.setMessage(Messages.SheetsChosen_numbers);
			numbers.setText(first > 0 ? Integer.toString(first) : ""); //$NON-NLS-1$
			numbers.setEnabled(which.getSelectionIndex() != ALL);
		}
		GridDataFactory.fillDefaults().hint(NUMBERS_PX, SWT.DEFAULT).applyTo(numbers);
		which.addListener(SWT.Selection, event -> {
			numbers.setEnabled(count == 0 || which.getSelectionIndex() != ALL);
			changed.run();
		});
		numbers.addListener(SWT.Modify, event -> changed.run());
	}

	void focus() {
		which.setFocus();
	}

	/**
	 * From 1, in the order of the job; a job without sheets is put on one.
	 *
	 * @throws IllegalArgumentException if there is no such sheet; the message says which
	 */
	List<Integer> numbers() {
		if (job.getSheets().isEmpty()) {
			return List.of(1);
		}
		SheetChoice choice = which.getSelectionIndex() == ALL ? SheetChoice.ALL : SheetChoice.of(numbers.getText());
		return choice.of(job).stream().map(sheet -> job.getSheets().indexOf(sheet) + 1).toList();
	}

	/**
	 * Of the sheet of a job that has none; empty for that of its stock.
	 *
	 * @throws IllegalArgumentException if what was typed is no size; the message says so
	 */
	Optional<Size> bareSize() {
		if (!job.getSheets().isEmpty() || numbers.getText().isBlank()) {
			return Optional.empty();
		}
		Format.Sheet sheet = Formats.sheet(numbers.getText());
		return Optional.of(new Size(sheet.width().doubleValue(), sheet.height().doubleValue()));
	}
}
