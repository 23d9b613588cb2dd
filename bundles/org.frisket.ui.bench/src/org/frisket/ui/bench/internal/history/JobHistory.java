package org.frisket.ui.bench.internal.history;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CommandStack;

/** The edits of a job in their order, those that were taken back included. */
public final class JobHistory {

	private final CommandStack stack;

	public JobHistory(CommandStack stack) {
		this.stack = stack;
	}

	/** Names of the edits, the oldest first; those after the {@link #present()} were taken back. */
	public List<String> steps() {
		return commands().map(Command::getLabel).toList();
	}

	private Stream<Command> commands() {
		return Stream.of(stack.getCommands()).map(Command.class::cast);
	}

	/** How many of the steps are done now. */
	public int present() {
		return stack.canUndo() ? commands().toList().indexOf(stack.getUndoCommand()) + 1 : 0;
	}

	/**
	 * Takes steps back or makes them again until so many are done.
	 *
	 * @param step from 0, the job as it was opened, to the number of steps; beyond them the nearest of both
	 */
	public void goTo(int step) {
		int left = Math.max(0, Math.min(step, stack.getCommands().length)) - present();
		for (; left < 0 && stack.canUndo(); left++) {
			stack.undo();
		}
		for (; left > 0 && stack.canRedo(); left--) {
			stack.redo();
		}
	}
}
