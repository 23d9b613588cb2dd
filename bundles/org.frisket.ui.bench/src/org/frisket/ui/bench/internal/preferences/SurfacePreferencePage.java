package org.frisket.ui.bench.internal.preferences;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.BooleanFieldEditor;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.StringFieldEditor;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.preferences.ScopedPreferenceStore;
import org.frisket.ui.bench.internal.files.BenchPreferences;
import org.frisket.ui.bench.internal.surface.GridStep;
import org.frisket.ui.bench.internal.surface.SurfaceOption;

/** The step of the grid, what is seen while laying out, and what holds things that are dragged. */
public final class SurfacePreferencePage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

	public SurfacePreferencePage() {
		super(GRID);
		setPreferenceStore(new ScopedPreferenceStore(InstanceScope.INSTANCE, BenchPreferences.NODE));
	}

	@Override
	public void init(IWorkbench workbench) {
		// needs nothing of it
	}

	@Override
	protected void createFieldEditors() {
		addField(step(GridStep.MILLIMETRES, Messages.SurfacePreferencePage_stepMillimetres));
		addField(step(GridStep.INCHES, Messages.SurfacePreferencePage_stepInches));
		add(SurfaceOption.RULERS, Messages.SurfacePreferencePage_rulers);
		add(SurfaceOption.GRID, Messages.SurfacePreferencePage_grid);
		add(SurfaceOption.GUIDES, Messages.SurfacePreferencePage_guides);
		add(SurfaceOption.GUIDES_LOCKED, Messages.SurfacePreferencePage_lockGuides);
		add(SurfaceOption.BOX_TOUCHES, Messages.SurfacePreferencePage_boxTouches);
		add(SurfaceOption.SNAP, Messages.SurfacePreferencePage_snap);
		add(SurfaceOption.SNAP_GUIDES, Messages.SurfacePreferencePage_snapGuides);
		add(SurfaceOption.SNAP_NODES, Messages.SurfacePreferencePage_snapNodes);
		add(SurfaceOption.SNAP_EDGES, Messages.SurfacePreferencePage_snapEdges);
		add(SurfaceOption.SNAP_CENTRES, Messages.SurfacePreferencePage_snapCentres);
		add(SurfaceOption.SNAP_GRID, Messages.SurfacePreferencePage_snapGrid);
	}

	private StringFieldEditor step(GridStep step, String label) {
		StringFieldEditor field = new StringFieldEditor(step.key(), label, getFieldEditorParent()) {

			@Override
			protected boolean doCheckState() {
				return step.isValid(getStringValue());
			}
		};
		field.setErrorMessage(Messages.SurfacePreferencePage_stepWrong);
		return field;
	}

	private void add(SurfaceOption option, String label) {
		addField(new BooleanFieldEditor(option.key(), label, getFieldEditorParent()));
	}
}
