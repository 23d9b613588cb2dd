package org.frisket.ui.bench.internal.preferences;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.preference.DirectoryFieldEditor;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.StringFieldEditor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.preferences.ScopedPreferenceStore;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioException;
import org.frisket.studio.StudioFolder;
import org.frisket.ui.bench.StudioChoice;

/** Where the studio's folder is. It is made when it is chosen, so that fonts can be put into it. */
public final class StudioPreferencePage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

	private static final int COLUMNS = 3;
	private static final int LINE_PX = 400;

	private DirectoryFieldEditor folder;

	public StudioPreferencePage() {
		super(GRID);
		setPreferenceStore(new ScopedPreferenceStore(InstanceScope.INSTANCE, StudioChoice.NODE));
	}

	@Override
	public void init(IWorkbench workbench) {
		// needs nothing of it
	}

	@Override
	protected void createFieldEditors() {
		Composite parent = getFieldEditorParent();
		folder = new DirectoryFieldEditor() {

			@Override
			protected boolean doCheckState() {
				// one that is missing is made
				return true;
			}
		};
		folder.setChangeButtonText(JFaceResources.getString("openBrowse")); //$NON-NLS-1$
		init(folder, parent);
		addField(folder);
		Label note = new Label(parent, SWT.WRAP);
		note.setText(NLS.bind(Messages.StudioPreferencePage_note, Studio.folder().path()));
		GridDataFactory.fillDefaults().span(COLUMNS, 1).hint(LINE_PX, SWT.DEFAULT).applyTo(note);
	}

	private static void init(StringFieldEditor field, Composite parent) {
		field.setPreferenceName(StudioChoice.KEY);
		field.setLabelText(Messages.StudioPreferencePage_folder);
		field.setEmptyStringAllowed(true);
		field.fillIntoGrid(parent, COLUMNS);
	}

	@Override
	public boolean performOk() {
		try {
			String chosen = folder.getStringValue().strip();
			if (!chosen.isEmpty()) {
				new StudioFolder(Path.of(chosen)).open();
			}
		} catch (InvalidPathException | StudioException e) {
			setErrorMessage(e.getMessage());
			return false;
		}
		setErrorMessage(null);
		boolean done = super.performOk();
		StudioChoice.apply();
		return done;
	}
}
