package org.frisket.ui.bench.internal.preferences;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.IPreferenceStore;
import org.eclipse.jface.preference.IntegerFieldEditor;
import org.eclipse.jface.preference.RadioGroupFieldEditor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.preferences.ScopedPreferenceStore;
import org.frisket.ui.LengthUnit;
import org.frisket.ui.bench.internal.files.BenchPreferences;

/** The unit of lengths, how often a recovery copy is made, and how to choose the language. */
public final class BenchPreferencePage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

	private static final int COLUMNS = 2;
	private static final int LINE_PX = 400;

	private final IPreferenceStore lengths = new ScopedPreferenceStore(InstanceScope.INSTANCE, LengthUnit.NODE);

	public BenchPreferencePage() {
		super(GRID);
		setPreferenceStore(new ScopedPreferenceStore(InstanceScope.INSTANCE, BenchPreferences.NODE));
		lengths.setDefault(LengthUnit.KEY, LengthUnit.MILLIMETRE.name());
	}

	@Override
	public void init(IWorkbench workbench) {
		// needs nothing of it
	}

	@Override
	protected void createFieldEditors() {
		Composite parent = getFieldEditorParent();
		addField(new RadioGroupFieldEditor(LengthUnit.KEY, Messages.BenchPreferencePage_unit, 1,
				new String[][] { { Messages.BenchPreferencePage_millimetres, LengthUnit.MILLIMETRE.name() },
						{ Messages.BenchPreferencePage_inches, LengthUnit.INCH.name() } },
				parent) {

			@Override
			public void setPreferenceStore(IPreferenceStore store) {
				super.setPreferenceStore(store == null ? null : lengths);
			}
		});
		IntegerFieldEditor autosave = new IntegerFieldEditor(BenchPreferences.AUTOSAVE_SECONDS,
				Messages.BenchPreferencePage_autosave, parent);
		autosave.setValidRange(BenchPreferences.AUTOSAVE_LEAST, BenchPreferences.AUTOSAVE_MOST);
		addField(autosave);
		Label language = new Label(parent, SWT.WRAP);
		language.setText(Messages.BenchPreferencePage_language);
		GridDataFactory.fillDefaults().span(COLUMNS, 1).hint(LINE_PX, SWT.DEFAULT).applyTo(language);
	}
}
