package org.frisket.ui.views.internal.properties;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** A group of fields under a heading, with the labels in one column. */
abstract class Form {

	/** Under which a control keeps the name of its field, for tests and for assistive technology. */
	static final String NAME = "org.frisket.field"; //$NON-NLS-1$

	private static final int SPACE_PX = 4;
	private static final int LEAST_PX = 60;

	private final Composite body;
	private final List<Field> fields = new ArrayList<>();

	Form(Composite parent, String title) {
		body = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(2 * SPACE_PX, SPACE_PX).applyTo(body);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(body);
		Label heading = new Label(body, SWT.NONE);
		heading.setText(title);
		heading.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
		GridDataFactory.fillDefaults().span(2, 1).indent(0, 2 * SPACE_PX).applyTo(heading);
	}

	/** A row with its label; the field goes into what is returned, a grid of one column. */
	Composite row(String name) {
		label(body, name);
		return cell(name, 1);
	}

	/** A row without a label, as wide as the form. */
	Composite wide(String name) {
		return cell(name, 2);
	}

	private Composite cell(String name, int span) {
		return cell(body, name, span);
	}

	/** A label for what stands beside it. */
	static Label label(Composite parent, String text) {
		Label label = new Label(parent, SWT.NONE);
		label.setText(text);
		label.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false));
		return label;
	}

	/** Where a field of this name goes, across so many columns of a grid. */
	static Composite cell(Composite parent, String name, int span) {
		Composite cell = new Composite(parent, SWT.NONE);
		cell.setData(NAME, name);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(cell);
		GridDataFactory.fillDefaults().grab(true, false).span(span, 1).applyTo(cell);
		return cell;
	}

	<F extends Field> F add(F field) {
		fields.add(field);
		return field;
	}

	Composite body() {
		return body;
	}

	void refresh() {
		fields.forEach(Field::refresh);
	}

	void reset() {
		fields.forEach(Field::reset);
	}

	void setShown(boolean shown) {
		if (((GridData) body.getLayoutData()).exclude == shown) {
			((GridData) body.getLayoutData()).exclude = !shown;
			body.setVisible(shown);
		}
	}

	static void fill(Control field) {
		GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_PX, SWT.DEFAULT).applyTo(field);
	}

	/** Makes room for what was shown or hidden in the scrolled form around a control. */
	static void layout(Control changed) {
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
