package org.frisket.ui.material.internal.machines;

import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.frisket.material.desk.DeskState;
import org.frisket.material.desk.Profile;
import org.frisket.material.tools.Blade;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Tool;
import org.frisket.model.Job;

/** The form of one profile, with the wear of an edge and the calibration that belongs to it. */
final class ProfilePage extends Composite {

	/** What is asked for here. */
	interface Client {

		/** Keep the profile so. */
		void keep(Profile before, Profile after);

		/** Lay this on a bench. */
		void open(Job job);
	}

	private static final int MARGIN_PX = 12;
	private static final int NOTE_PX = 460;
	private final Client client;
	private final Label title;
	private final Label note;
	private final OptionRows rows;
	private final WearBar wear;
	private final OffsetPart offset;
	private final ScalePart scale;
	private Profile shown;

	ProfilePage(ScrolledComposite parent, Client client) {
		super(parent, SWT.NONE);
		this.client = client;
		GridLayoutFactory.fillDefaults().margins(MARGIN_PX, MARGIN_PX).spacing(MARGIN_PX, MARGIN_PX).applyTo(this);
		title = new Label(this, SWT.NONE);
		title.setFont(JFaceResources.getHeaderFont());
		note = new Label(this, SWT.WRAP);
		GridDataFactory.fillDefaults().hint(NOTE_PX, SWT.DEFAULT).applyTo(note);
		rows = new OptionRows(this, new OptionRows.Client() {
			@Override
			public void typed() {
				check();
			}

			@Override
			public void taken() {
				take();
			}
		});
		place(rows);
		wear = place(new WearBar(this));
		Consumer<Job> opener = client::open;
		offset = place(new OffsetPart(this, opener, blade -> client.keep(shown, Profile.of(blade))));
		scale = place(new ScalePart(this, opener, machine -> client.keep(shown, Profile.of(machine))));
		addListener(SWT.Resize, event -> fit());
	}

	private static <C extends Control> C place(C part) {
		GridDataFactory.fillDefaults().grab(true, false).applyTo(part);
		return part;
	}

	/** Shows a profile as the studio has it; null explains what all this is. */
	void show(Profile profile, DeskState state, boolean canKeep) {
		if (profile != null && shown != null && profile.isSame(shown) && rows.isTyping()) {
			shown = profile;
			return;
		}
		shown = profile;
		show(rows, profile != null);
		show(wear, false);
		show(offset, false);
		show(scale, false);
		if (profile == null) {
			title.setText(Messages.ProfilePage_title);
			note.setText(Messages.ProfilePage_empty);
		} else {
			rows.show(profile.options(), profile.texts());
			rows.say(profile.problems());
			rows.setReadOnly(!canKeep);
			switch (profile.what()) {
			case MACHINE -> state.machine(profile.id()).ifPresent(this::showMachine);
			case TOOL -> state.tool(profile.id()).ifPresent(this::showTool);
			case RULES -> {
				title.setText(Messages.ProfilePage_rules);
				note.setText(Messages.ProfilePage_rulesNote);
			}
			}
		}
		fit();
	}

	private void showMachine(Machine machine) {
		title.setText(machine.name());
		note.setText(Messages.ProfilePage_machineNote);
		show(scale, true);
		scale.show(machine);
	}

	private void showTool(Tool tool) {
		title.setText(tool.name());
		note.setText(NLS.bind(Messages.ProfilePage_toolNote, ToolName.of(tool.kind())));
		if (tool.edge().isPresent()) {
			show(wear, true);
			wear.show(tool);
		}
		if (tool instanceof Blade blade) {
			show(offset, true);
			offset.show(blade);
		}
	}

	private static void show(Control part, boolean visible) {
		((GridData) part.getLayoutData()).exclude = !visible;
		part.setVisible(visible);
	}

	private void check() {
		if (shown != null) {
			rows.say(shown.with(rows.texts()).problems());
			fit();
		}
	}

	private void take() {
		if (shown == null || !StudioDesk.get().canKeep()) {
			return;
		}
		Profile typed = shown.with(rows.texts());
		if (!typed.equals(shown) && typed.problems().isEmpty()) {
			Profile before = shown;
			shown = typed;
			client.keep(before, typed);
		}
	}

	private void fit() {
		layout(true, true);
		ScrolledComposite scroll = (ScrolledComposite) getParent();
		scroll.setMinHeight(computeSize(Math.max(NOTE_PX, scroll.getClientArea().width), SWT.DEFAULT).y);
	}
}
