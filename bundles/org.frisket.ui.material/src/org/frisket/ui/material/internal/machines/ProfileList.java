package org.frisket.ui.material.internal.machines;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.frisket.material.desk.DeskState;
import org.frisket.material.desk.Profile;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolKind;

/** Machines, tools and rules of thumb, and the buttons that make new ones. */
final class ProfileList extends Composite {

	/** What is asked for here. */
	interface Client {

		/** Look at this; null for what explains the list itself. */
		void chosen(Profile profile);

		void newMachine();

		void newTool(ToolKind kind);

		/** Take a machine or a tool away. */
		void remove(Profile profile);
	}

	private static final int SPACE_PX = 8;
	private final Tree tree;
	private final Image machineIcon;
	private final Image toolIcon;
	private final Image rulesIcon;
	private final Button newMachine;
	private final Button newTool;
	private final Button remove;
	private boolean canKeep;
	private List<Profile> shown = List.of();

	ProfileList(Composite parent, Client client) {
		super(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(SPACE_PX, SPACE_PX).applyTo(this);
		machineIcon = RoomIcon.MACHINE.image(this);
		toolIcon = RoomIcon.TOOL.image(this);
		rulesIcon = RoomIcon.RULES.image(this);
		tree = new Tree(this, SWT.BORDER | SWT.SINGLE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(tree);
		tree.addListener(SWT.Selection, event -> {
			enableRemove();
			client.chosen((Profile) event.item.getData());
		});
		newMachine = push(Messages.ProfileList_newMachine, client::newMachine);
		Menu kinds = new Menu(this);
		for (ToolKind kind : ToolKind.values()) {
			MenuItem item = new MenuItem(kinds, SWT.PUSH);
			item.setText(ToolName.of(kind));
			item.addListener(SWT.Selection, event -> client.newTool(kind));
		}
		newTool = push(Messages.ProfileList_newTool, () -> kinds.setVisible(true));
		remove = push(Messages.ProfileList_remove, () -> removable().ifPresent(client::remove));
		remove.setToolTipText(Messages.ProfileList_removeTip);
	}

	private Button push(String text, Runnable action) {
		Button button = new Button(this, SWT.PUSH);
		button.setText(text);
		button.addListener(SWT.Selection, event -> action.run());
		GridDataFactory.fillDefaults().grab(true, false).applyTo(button);
		return button;
	}

	/** Shows what the studio has; what was selected stays so. */
	void show(DeskState state, boolean canKeep) {
		newMachine.setEnabled(canKeep);
		newTool.setEnabled(canKeep);
		this.canKeep = canKeep;
		enableRemove();
		List<Profile> all = new ArrayList<>();
		state.machines().forEach(machine -> all.add(Profile.of(machine)));
		state.tools().forEach(tool -> all.add(Profile.of(tool)));
		all.add(Profile.ofRules(state.rules()));
		if (all.equals(shown)) {
			return;
		}
		Optional<Profile> selected = selection();
		shown = all;
		tree.removeAll();
		TreeItem machines = root(Messages.ProfileList_machines);
		for (Machine machine : state.machines()) {
			child(machines, machine.name(), machineIcon, Profile.of(machine));
		}
		TreeItem tools = root(Messages.ProfileList_tools);
		for (Tool tool : state.tools()) {
			child(tools, tool.name(), toolIcon, Profile.of(tool));
		}
		TreeItem rules = root(Messages.ProfileList_rules);
		rules.setImage(rulesIcon);
		rules.setData(Profile.ofRules(state.rules()));
		machines.setExpanded(true);
		tools.setExpanded(true);
		selected.ifPresent(this::select);
		enableRemove();
	}

	/** There is always one set of rules. */
	private Optional<Profile> removable() {
		return selection().filter(profile -> profile.what() != Profile.What.RULES);
	}

	private void enableRemove() {
		remove.setEnabled(canKeep && removable().isPresent());
	}

	private TreeItem root(String text) {
		TreeItem item = new TreeItem(tree, SWT.NONE);
		item.setText(text);
		return item;
	}

	private static void child(TreeItem parent, String name, Image icon, Profile profile) {
		TreeItem item = new TreeItem(parent, SWT.NONE);
		item.setText(name);
		item.setImage(icon);
		item.setData(profile);
	}

	private Optional<Profile> selection() {
		return tree.getSelectionCount() == 0 ? Optional.empty()
				: Optional.ofNullable((Profile) tree.getSelection()[0].getData());
	}

	void select(Profile profile) {
		for (TreeItem root : tree.getItems()) {
			if (root.getData() instanceof Profile own && own.isSame(profile)) {
				tree.setSelection(root);
			}
			for (TreeItem item : root.getItems()) {
				if (((Profile) item.getData()).isSame(profile)) {
					tree.setSelection(item);
				}
			}
		}
		enableRemove();
	}

	@Override
	public boolean setFocus() {
		return tree.setFocus();
	}
}
