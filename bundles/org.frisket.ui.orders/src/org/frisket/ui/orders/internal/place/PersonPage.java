package org.frisket.ui.orders.internal.place;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.StringFieldEditor;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.preferences.ScopedPreferenceStore;
import org.frisket.ui.orders.internal.Person;
import org.frisket.ui.orders.internal.Named;

/** Who sits at this desk. */
public final class PersonPage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

	private static final int COLUMNS = 2;
	private static final int LINE_PX = 400;
	/** As much as the order book keeps. */
	private static final int LONGEST = 100;

	public PersonPage() {
		super(GRID);
		setPreferenceStore(new ScopedPreferenceStore(InstanceScope.INSTANCE, Person.NODE));
	}

	@Override
	public void init(IWorkbench workbench) {
		// needs nothing of it
	}

	@Override
	protected void createFieldEditors() {
		Composite parent = getFieldEditorParent();
		StringFieldEditor name = new StringFieldEditor(Person.KEY, Messages.PersonPage_name, parent);
		name.setTextLimit(LONGEST);
		Named.as(name.getLabelText().replace("&", "").replace(":", ""), name.getTextControl(parent)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
		name.getTextControl(parent).setMessage(Person.ofComputer());
		addField(name);
		Label note = new Label(parent, SWT.WRAP);
		note.setText(NLS.bind(Messages.PersonPage_note, Person.ofComputer()));
		GridDataFactory.fillDefaults().span(COLUMNS, 1).hint(LINE_PX, SWT.DEFAULT).applyTo(note);
	}
}
