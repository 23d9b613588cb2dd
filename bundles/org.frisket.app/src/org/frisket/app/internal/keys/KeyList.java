package org.frisket.app.internal.keys;

import java.text.Collator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.NotDefinedException;
import org.eclipse.core.commands.contexts.Context;
import org.eclipse.jface.bindings.Binding;
import org.eclipse.jface.bindings.Scheme;
import org.eclipse.jface.bindings.TriggerSequence;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.keys.IBindingService;
import org.eclipse.ui.services.IServiceLocator;

/** Our commands, and those of the platform that have keys and can be given now, in the order of their names. */
final class KeyList {

	private static final String OURS = "org.frisket"; //$NON-NLS-1$

	/** They look into the program and not into a job. */
	private static final Set<String> FOR_DEVELOPERS = Set.of("org.eclipse.ui.window.spy", //$NON-NLS-1$
			"org.eclipse.ui.activeContextInfo"); //$NON-NLS-1$

	/** The same keys in the same place mean one thing only: that of the scheme that comes first, or of the user. */
	private record Place(TriggerSequence keys, String context) {
	}

	private final IBindingService bindings;
	private final ICommandService commands;
	private final IContextService contexts;

	KeyList(IServiceLocator services) {
		bindings = services.getService(IBindingService.class);
		commands = services.getService(ICommandService.class);
		contexts = services.getService(IContextService.class);
	}

	/** Each row with the command that it does. */
	Map<KeyRow, ParameterizedCommand> rows() {
		Map<KeyRow, ParameterizedCommand> found = new HashMap<>();
		Set<Command> withKeys = new HashSet<>();
		for (Binding binding : inForce()) {
			ParameterizedCommand command = binding.getParameterizedCommand();
			if (command != null && isOffered(command.getCommand())) {
				withKeys.add(command.getCommand());
				found.put(row(command, binding.getTriggerSequence().format(), where(binding)), command);
			}
		}
		for (Command command : commands.getDefinedCommands()) {
			if (command.getId().startsWith(OURS) && isOffered(command) && !withKeys.contains(command)
					&& needsNothing(command)) {
				ParameterizedCommand plain = new ParameterizedCommand(command, null);
				found.put(row(plain, "", ""), plain); //$NON-NLS-1$ //$NON-NLS-2$
			}
		}
		List<KeyRow> sorted = new ArrayList<>(found.keySet());
		Collator collator = Collator.getInstance();
		sorted.sort(Comparator.comparing(KeyRow::command, collator::compare).thenComparing(KeyRow::keys)
				.thenComparing(KeyRow::where));
		Map<KeyRow, ParameterizedCommand> rows = new LinkedHashMap<>();
		sorted.forEach(row -> rows.put(row, found.get(row)));
		return rows;
	}

	private List<Binding> inForce() {
		Map<Place, Binding> inForce = new LinkedHashMap<>();
		for (Binding binding : bindings.getBindings()) {
			if (rank(binding) > 0) {
				inForce.merge(new Place(binding.getTriggerSequence(), binding.getContextId()), binding,
						(one, other) -> rank(other) > rank(one) ? other : one);
			}
		}
		return List.copyOf(inForce.values());
	}

	/** The higher goes before the lower; 0 for what does not hold at all. */
	private int rank(Binding binding) {
		boolean ofScheme = Objects.equals(binding.getSchemeId(), bindings.getActiveScheme().getId());
		if (!ofScheme && !Objects.equals(binding.getSchemeId(), parent(bindings.getActiveScheme()))
				|| binding.getPlatform() != null && !binding.getPlatform().equals(org.eclipse.swt.SWT.getPlatform())) {
			return 0;
		}
		return (binding.getType() == Binding.USER ? 4 : 0) + (ofScheme ? 2 : 0) + 1
				+ (binding.getPlatform() == null ? 0 : 8);
	}

	private static String parent(Scheme scheme) {
		try {
			return scheme.getParentId();
		} catch (NotDefinedException e) {
			return null;
		}
	}

	private static boolean isOffered(Command command) {
		return command.isDefined() && !FOR_DEVELOPERS.contains(command.getId())
				&& (command.getId().startsWith(OURS) || command.isHandled());
	}

	private static boolean needsNothing(Command command) {
		try {
			return command.getParameters() == null;
		} catch (NotDefinedException e) {
			return false;
		}
	}

	private KeyRow row(ParameterizedCommand command, String keys, String where) {
		try {
			return new KeyRow(command.getName(), Objects.requireNonNullElse(command.getCommand().getDescription(), ""), //$NON-NLS-1$
					keys, where);
		} catch (NotDefinedException e) {
			return new KeyRow(command.getId(), "", keys, where); //$NON-NLS-1$
		}
	}

	private String where(Binding binding) {
		Context context = contexts.getContext(binding.getContextId());
		try {
			return context.getName();
		} catch (NotDefinedException e) {
			return ""; //$NON-NLS-1$
		}
	}
}
