package org.frisket.ui.bench.internal.editor;

import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.jface.bindings.Binding;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.keys.IBindingService;
import org.frisket.ui.bench.Bench;

/** The keys that carry out the cure of a finding by its number, as the user has set them. */
final class CureKey {

	private CureKey() {
	}

	/** How the key on the bench is written; empty if there is none for the number. */
	static Optional<String> of(int number) {
		IBindingService bindings = PlatformUI.getWorkbench().getService(IBindingService.class);
		return Stream.of(bindings.getBindings())
				.filter(binding -> Bench.CONTEXT_ID.equals(binding.getContextId()) && isFor(binding, number))
				.map(binding -> binding.getTriggerSequence().format()).findFirst();
	}

	private static boolean isFor(Binding binding, int number) {
		ParameterizedCommand command = binding.getParameterizedCommand();
		return command != null && Bench.CURE_COMMAND_ID.equals(command.getId())
				&& String.valueOf(number).equals(command.getParameterMap().get(Bench.CURE_NUMBER));
	}
}
