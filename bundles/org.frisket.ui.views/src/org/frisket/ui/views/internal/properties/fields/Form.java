package org.frisket.ui.views.internal.properties.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** A section of fields under a heading that folds it away, with the labels in one column. */
public abstract class Form {

	/** Under which a control keeps the name of its field, for tests and for assistive technology. */
	public static final String NAME = "org.frisket.field"; //$NON-NLS-1$

	/** Under which the place of a field keeps the label beside it. */
	private static final String LABEL = "org.frisket.label"; //$NON-NLS-1$

	private static final int SPACE_PX = 4;
	private static final int LEAST_PX = 60;

	private final Composite section;
	private final Heading heading;
	private final Composite body;
	private final List<Field> fields = new ArrayList<>();

	protected Form(Composite parent, String title) {
		this(parent, title, false);
	}

	/** @param folded whether it is folded away until the user wants to see it */
	protected Form(Composite parent, String title, boolean folded) {
		section = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, SPACE_PX).applyTo(section);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(section);
		heading = new Heading(section, title, this::toggle);
		GridDataFactory.fillDefaults().grab(true, false).indent(0, 2 * SPACE_PX).applyTo(heading);
		body = new Composite(section, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(2 * SPACE_PX, SPACE_PX).applyTo(body);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(body);
		fold(FoldMemory.isFolded(id(), folded));
	}

	private String id() {
		return getClass().getSimpleName();
	}

	private void toggle() {
		setFolded(!heading.isFolded());
	}

	/** Folds what is below the heading away or out, and remembers it. */
	public final void setFolded(boolean folded) {
		if (folded != heading.isFolded()) {
			FoldMemory.setFolded(id(), folded);
			fold(folded);
			if (!folded) {
				refresh();
			}
			layout(section);
		}
	}

	private void fold(boolean folded) {
		heading.setFolded(folded);
		show(body, !folded);
	}

	public Heading heading() {
		return heading;
	}

	/** A row with its label; the field goes into what is returned, a grid of one column. */
	public Composite row(String name) {
		Label label = label(body, name);
		Composite cell = cell(name, 1);
		cell.setData(LABEL, label);
		return cell;
	}

	/** A row without a label, as wide as the form. */
	public Composite wide(String name) {
		return cell(name, 2);
	}

	private Composite cell(String name, int span) {
		return cell(body, name, span);
	}

	/** A label for what stands beside it. */
	public static Label label(Composite parent, String text) {
		Label label = new Label(parent, SWT.NONE);
		label.setText(text);
		label.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false));
		return label;
	}

	/** Where a field of this name goes, across so many columns of a grid. */
	public static Composite cell(Composite parent, String name, int span) {
		Composite cell = new Composite(parent, SWT.NONE);
		cell.setData(NAME, name);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(cell);
		GridDataFactory.fillDefaults().grab(true, false).span(span, 1).applyTo(cell);
		return cell;
	}

	public <F extends Field> F add(F field) {
		fields.add(field);
		return field;
	}

	public Composite body() {
		return body;
	}

	public void refresh() {
		fields.forEach(Field::refresh);
	}

	public void reset() {
		fields.forEach(Field::reset);
	}

	/** Shows the section or leaves it out. */
	public void setShown(boolean shown) {
		if (show(section, shown)) {
			layout(section);
		}
	}

	/** Shows the place of a field, and the label beside it, only where there is something to set. */
	public void showWhen(BooleanSupplier wanted, Composite... cells) {
		List<Composite> rows = List.of(cells);
		add(new Field() {

			@Override
			public void refresh() {
				boolean changed = false;
				for (Composite cell : rows) {
					boolean shown = wanted.getAsBoolean();
					if (cell.getData(LABEL) instanceof Label label) {
						show(label, shown);
					}
					changed |= show(cell, shown);
				}
				if (changed) {
					layout(body);
				}
			}

			@Override
			public void reset() {
				refresh();
			}
		});
	}

	/** What shows a row of a list, its label and the place of its field, only where there is something to set. */
	public static Field shownWhen(BooleanSupplier wanted, Label label, Composite cell) {
		return new Field() {

			@Override
			public void refresh() {
				boolean shown = wanted.getAsBoolean();
				show(label, shown);
				if (show(cell, shown)) {
					layout(cell.getParent());
				}
			}

			@Override
			public void reset() {
				refresh();
			}
		};
	}

	/** @return whether it was otherwise before */
	public static boolean show(Control control, boolean shown) {
		GridData data = (GridData) control.getLayoutData();
		boolean changed = data.exclude == shown;
		data.exclude = !shown;
		control.setVisible(shown);
		return changed;
	}

	public static void fill(Control field) {
		GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_PX, SWT.DEFAULT).applyTo(field);
	}

	/** Makes room for what was shown or hidden in the scrolled form around a control. */
	public static void layout(Control changed) {
		changed.requestLayout();
		Control at = changed;
		while (at != null && !(at instanceof ScrolledComposite)) {
			at = at.getParent();
		}
		if (at instanceof ScrolledComposite scroll && scroll.getContent() != null) {
			scroll.setMinHeight(scroll.getContent().computeSize(scroll.getClientArea().width, SWT.DEFAULT).y);
		}
	}
}
