package org.frisket.ui.views.internal.properties;

import java.util.function.DoubleFunction;
import java.util.function.Supplier;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Scale;
import org.frisket.editing.Edit;
import org.frisket.ui.views.internal.properties.fields.Field;
import org.frisket.ui.views.internal.properties.fields.Form;

/**
 * A slider beside the entry of a quantity. The bench follows it while it is dragged or moved by the arrow keys; letting
 * go is one step of undo, Escape before that leaves everything as it was. What is typed may lie beyond its ends.
 */
public final class Slide implements Field {

	private static final int WIDTH_PX = 70;
	private static final int PAGE = 10;

	private final Subject subject;
	private final double least;
	private final double step;
	private final Supplier<Double> source;
	private final DoubleFunction<Edit> edit;
	private final Scale scale;
	/** Whether a button or a key is down, which will be let go. */
	private boolean held;
	private boolean givenUp;

	/**
	 * @param row    of an entry; the slider goes beside it
	 * @param source null where several elements differ, or there is nothing to slide
	 * @param edit   made for a value while the job is as it was before the slider was touched
	 */
	public Slide(Composite row, Subject subject, double least, double most, double step, Supplier<Double> source,
			DoubleFunction<Edit> edit) {
		this.subject = subject;
		this.least = least;
		this.step = step;
		this.source = source;
		this.edit = edit;
		((GridLayout) row.getLayout()).numColumns = 2;
		scale = new Scale(row, SWT.HORIZONTAL);
		scale.setMinimum(0);
		scale.setMaximum((int) Math.rint((most - least) / step));
		scale.setPageIncrement(PAGE);
		scale.setData(Form.NAME, name(row));
		scale.getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = (String) row.getData(Form.NAME);
			}
		});
		GridDataFactory.fillDefaults().hint(WIDTH_PX, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(scale);
		scale.moveBelow(row.getChildren()[0]);
		((GridData) row.getChildren()[row.getChildren().length - 1].getLayoutData())
				.horizontalSpan = 2;
		scale.addListener(SWT.Selection, event -> slid());
		scale.addListener(SWT.MouseDown, event -> held = true);
		scale.addListener(SWT.MouseUp, event -> letGo());
		scale.addListener(SWT.KeyDown, this::keyDown);
		scale.addListener(SWT.KeyUp, event -> letGo());
		scale.addListener(SWT.FocusOut, event -> letGo());
		// the wheel scrolls the form, and must not set what the pointer happens to pass
		scale.addListener(SWT.MouseVerticalWheel, event -> event.doit = false);
	}

	/** What a slider is called beside the entry of the same name. */
	public static String name(Composite row) {
		return row.getData(Form.NAME) + " slider"; //$NON-NLS-1$
	}

	private void slid() {
		if (givenUp) {
			refresh();
			return;
		}
		double value = least + scale.getSelection() * step;
		// of a tenth times whole numbers only the tenths
		double rounded = Math.rint(value / step) * step;
		double clean = Math.rint(rounded * 1e6) / 1e6;
		subject.draft().show(() -> edit.apply(clean));
		if (!held) {
			subject.draft().accept();
		}
	}

	private void keyDown(Event event) {
		if (event.keyCode == SWT.ESC) {
			givenUp = held;
			subject.draft().drop();
			refresh();
		} else {
			held = true;
		}
	}

	private void letGo() {
		if (held) {
			held = false;
			if (!givenUp) {
				subject.draft().accept();
			}
			givenUp = false;
		}
	}

	@Override
	public void refresh() {
		Double value = source.get();
		scale.setEnabled(value != null);
		int place = value == null ? 0 : (int) Math.rint((value - least) / step);
		int within = Math.max(0, Math.min(scale.getMaximum(), place));
		if (within != scale.getSelection()) {
			scale.setSelection(within);
		}
	}

	@Override
	public void reset() {
		refresh();
	}
}
