package org.frisket.ui.material.internal.machines;

import java.util.Map;

import org.eclipse.core.commands.operations.IUndoContext;
import org.eclipse.core.commands.operations.ObjectUndoContext;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.EditorPart;
import org.frisket.material.StockIds;
import org.frisket.material.desk.DeskState;
import org.frisket.material.desk.Profile;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.model.Job;
import org.frisket.ui.material.Material;

/**
 * The page of machines, tools and rules of thumb. What is taken in a field is kept at once and can be undone; there is
 * nothing to save.
 */
public final class MachinesEditor extends EditorPart implements StudioDesk.Listener {

	public static final String ID = Material.MACHINES_ID;

	private static final int[] WEIGHTS = { 28, 72 };
	private final IUndoContext context = new ObjectUndoContext(this);
	private UndoKeys undo;
	private Composite all;
	private ProfileList list;
	private ProfilePage page;
	private Profile chosen;

	@Override
	public void init(IEditorSite site, IEditorInput input) throws PartInitException {
		setSite(site);
		setInput(input);
		setPartName(input.getName());
	}

	@Override
	public void createPartControl(Composite parent) {
		all = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(all);
		new DeskBar(all);
		SashForm sash = new SashForm(all, SWT.HORIZONTAL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		undo = new UndoKeys(getSite(), context);
		list = new ProfileList(sash, new Choices());
		ScrolledComposite scroll = new ScrolledComposite(sash, SWT.V_SCROLL);
		page = new ProfilePage(scroll, new ProfilePage.Client() {
			@Override
			public void keep(Profile before, Profile after) {
				MachinesEditor.this.keep(before, after);
			}

			@Override
			public void open(Job job) {
				JobOpener.open(getSite().getPage(), job);
			}
		});
		scroll.setContent(page);
		scroll.setExpandHorizontal(true);
		scroll.setExpandVertical(true);
		sash.setWeights(WEIGHTS);
		StudioDesk.get().addListener(this);
		deskChanged();
		StudioDesk.get().refresh();
	}

	private final class Choices implements ProfileList.Client {

		@Override
		public void chosen(Profile profile) {
			chosen = profile;
			deskChanged();
		}

		@Override
		public void newMachine() {
			new WizardDialog(getSite().getShell(), new MachineWizard(StudioDesk.get().state(), MachinesEditor.this::add))
					.open();
		}

		@Override
		public void newTool(ToolKind kind) {
			DeskState state = StudioDesk.get().state();
			String name = ToolName.of(kind);
			String id = StockIds.free(kind.word(), state::hadTool);
			Profile usual = Profile.of(ToolOptions.tool(kind, id, Map.of("name", name))); //$NON-NLS-1$
			add(usual);
		}

		@Override
		public void remove(Profile profile) {
			undo.execute(new RemoveProfile(NLS.bind(Messages.MachinesEditor_removing, profile.texts().get("name")), //$NON-NLS-1$
					context, profile, MachinesEditor.this::say));
		}
	}

	/** A new profile; it is looked at when it is kept. */
	private void add(Profile profile) {
		StudioDesk.get().change(NLS.bind(Messages.MachinesEditor_keeping, profile.texts().get("name")), settings -> { //$NON-NLS-1$
			profile.keep(settings);
			return null;
		}, nothing -> {
			list.select(profile);
			chosen = profile;
			deskChanged();
		}, this::say);
	}

	private void keep(Profile before, Profile after) {
		String name = after.what() == Profile.What.RULES ? Messages.ProfilePage_rules : after.texts().get("name"); //$NON-NLS-1$
		undo.execute(new KeepProfile(NLS.bind(Messages.MachinesEditor_change, name), context, before, after, this::say));
	}

	private void say(String message) {
		getEditorSite().getActionBars().getStatusLineManager().setErrorMessage(message);
	}

	@Override
	public void deskChanged() {
		StudioDesk desk = StudioDesk.get();
		list.show(desk.state(), desk.canKeep());
		if (chosen != null) {
			chosen = chosen.isIn(desk.state()) ? chosen.in(desk.state()) : null;
		}
		page.show(chosen, desk.state(), desk.canKeep());
	}

	@Override
	public void setFocus() {
		list.setFocus();
	}

	@Override
	public void dispose() {
		StudioDesk.get().removeListener(this);
		if (undo != null) {
			undo.dispose();
		}
		super.dispose();
	}

	/** All that is seen on the page. */
	public Composite content() {
		return all;
	}

	@Override
	public boolean isDirty() {
		return false;
	}

	@Override
	public void doSave(IProgressMonitor monitor) {
		// all is kept already
	}

	@Override
	public boolean isSaveAsAllowed() {
		return false;
	}

	@Override
	public void doSaveAs() {
		// there is no other place
	}
}
