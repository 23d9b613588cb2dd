package org.frisket.editing.elements;

import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.model.Group;
import org.frisket.model.Jobs;

/** Gives a group another name, or none. */
public final class RenameGroup extends RecordingEdit {

	private final Group group;
	private final String groupName;

	/** @param name blank or null for none */
	public RenameGroup(Group group, String name) {
		super(Messages.RenameGroup_name);
		this.group = group;
		this.groupName = name == null || name.isBlank() ? null : name.strip();
	}

	@Override
	public boolean canApply() {
		return Jobs.jobOf(group) != null && !Objects.equals(groupName, group.getName());
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(group);
	}

	@Override
	protected void change() {
		group.setName(groupName);
	}
}
