package org.frisket.app.internal.appearance;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.RadioGroupFieldEditor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.preferences.ScopedPreferenceStore;

/** Light, dark, or as the system. */
public final class AppearancePage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

	private static final int LINE_PX = 400;

	public AppearancePage() {
		super(GRID);
		ScopedPreferenceStore store = new ScopedPreferenceStore(InstanceScope.INSTANCE, Appearance.NODE);
		store.setDefault(Appearance.KEY, Appearance.SYSTEM.name());
		setPreferenceStore(store);
	}

	@Override
	public void init(IWorkbench workbench) {
		// needs nothing of it
	}

	@Override
	protected void createFieldEditors() {
		Composite parent = getFieldEditorParent();
		RadioGroupFieldEditor choice = new RadioGroupFieldEditor(Appearance.KEY, Messages.AppearancePage_appearance, 1,
				new String[][] { { Messages.AppearancePage_system, Appearance.SYSTEM.name() },
						{ Messages.AppearancePage_light, Appearance.LIGHT.name() },
						{ Messages.AppearancePage_dark, Appearance.DARK.name() } },
				parent);
		choice.setEnabled(Appearance.canBeChosen(), parent);
		addField(choice);
		Label when = new Label(parent, SWT.WRAP);
		when.setText(Appearance.canBeChosen() ? Messages.AppearancePage_nextStart : Messages.AppearancePage_systemOnly);
		GridDataFactory.fillDefaults().span(2, 1).hint(LINE_PX, SWT.DEFAULT).applyTo(when);
	}
}
