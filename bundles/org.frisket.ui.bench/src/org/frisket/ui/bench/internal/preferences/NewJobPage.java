package org.frisket.ui.bench.internal.preferences;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.ColorFieldEditor;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.StringFieldEditor;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.preferences.ScopedPreferenceStore;
import org.frisket.ui.bench.internal.files.BenchPreferences;

/** What a new job begins with: the name and the colour of its first layer's stock. */
public final class NewJobPage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

	private static final int NAME_LENGTH = 60;

	public NewJobPage() {
		super(GRID);
		setPreferenceStore(new ScopedPreferenceStore(InstanceScope.INSTANCE, BenchPreferences.NODE));
		setDescription(Messages.NewJobPage_description);
	}

	@Override
	public void init(IWorkbench workbench) {
		// needs nothing of it
	}

	@Override
	protected void createFieldEditors() {
		StringFieldEditor name = new StringFieldEditor(BenchPreferences.STOCK_NAME, Messages.NewJobPage_name,
				getFieldEditorParent());
		name.setTextLimit(NAME_LENGTH);
		addField(name);
		addField(new ColorFieldEditor(BenchPreferences.STOCK_COLOUR, Messages.NewJobPage_colour, getFieldEditorParent()));
	}
}
