package org.frisket.ui.views.internal.properties.fields;

import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;

/**
 * A field that is typed into. What was typed is taken with Enter or when the field is left; Escape brings the old value
 * back. What cannot be taken stays in the field, marked with the reason, and the old value stays in the job.
 */
public final class Entry implements Field {

	private final Supplier<String> source;
	private final Consumer<String> sink;
	private final Text text;
	private final Mark mark;
	private String shown = ""; //$NON-NLS-1$
	private String hint = ""; //$NON-NLS-1$

	/**
	 * @param source the value as text; null where several elements differ
	 * @param sink   takes what was typed, or throws an IllegalArgumentException with the reason
	 */
	public Entry(Form form, String label, int style, Supplier<String> source, Consumer<String> sink) {
		this(form.row(label), style, source, sink);
	}

	/** In a row of its own making. */
	public Entry(Composite row, int style, Supplier<String> source, Consumer<String> sink) {
		this.source = source;
		this.sink = sink;
		text = new Text(row, SWT.BORDER | style);
		text.setData(Form.NAME, row.getData(Form.NAME));
		mark = new Mark(row, text);
		text.addListener(SWT.Traverse, this::traverse);
		text.addListener(SWT.FocusOut, event -> take());
		if ((style & SWT.MULTI) == 0) {
			text.addListener(SWT.FocusIn, event -> text.selectAll());
		}
	}

	/** What an empty field says, where nothing is a value too. */
	public Entry withHint(String text) {
		hint = text;
		return this;
	}

	private void traverse(Event event) {
		boolean many = (text.getStyle() & SWT.MULTI) != 0;
		if (event.detail == SWT.TRAVERSE_RETURN && (!many || (event.stateMask & SWT.MOD1) != 0)) {
			event.doit = false;
			take();
			if (!many) {
				text.selectAll();
			}
		} else if (event.detail == SWT.TRAVERSE_ESCAPE) {
			event.doit = false;
			show(source.get());
		} else if (many && (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS)) {
			event.doit = true;
		}
	}

	private void take() {
		String typed = text.getText();
		if (typed.equals(shown)) {
			mark.clear();
			return;
		}
		try {
			sink.accept(typed);
			show(source.get());
		} catch (IllegalArgumentException e) {
			mark.show(e.getMessage());
		}
	}

	private void show(String value) {
		shown = Objects.requireNonNullElse(value, ""); //$NON-NLS-1$
		text.setMessage(value == null ? Messages.Field_several : hint);
		if (!text.getText().equals(shown)) {
			text.setText(shown);
		}
		mark.clear();
	}

	@Override
	public void refresh() {
		// what is being typed is not swept away by news from the bench
		if (!text.isFocusControl() || text.getText().equals(shown)) {
			show(source.get());
			if (text.isFocusControl() && (text.getStyle() & SWT.MULTI) == 0) {
				text.selectAll();
			}
		}
	}

	@Override
	public void reset() {
		show(source.get());
	}

	public Text control() {
		return text;
	}
}
