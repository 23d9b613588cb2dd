package org.frisket.ui.sheets.internal.run;

import java.util.stream.Stream;

import org.eclipse.jface.bindings.Binding;
import org.eclipse.ui.contexts.IContextActivation;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.keys.IBindingService;
import org.eclipse.ui.services.IServiceLocator;

/** Has letters and space move in the run while it is looked at, and only then: in a field they are typed. */
final class RunKeys {

	private static final String CONTEXT_ID = "org.frisket.ui.sheets.run.context"; //$NON-NLS-1$
	private static final String COMMAND = "org.frisket.ui.sheets.command.run."; //$NON-NLS-1$
	private final IContextService contexts;
	private final IBindingService bindings;
	private IContextActivation active;

	RunKeys(IServiceLocator site) {
		contexts = site.getService(IContextService.class);
		bindings = site.getService(IBindingService.class);
	}

	void listen(boolean now) {
		if (now && active == null) {
			active = contexts.activateContext(CONTEXT_ID);
		} else if (!now && active != null) {
			contexts.deactivateContext(active);
			active = null;
		}
	}

	/** What a command does, with the key it is bound to now. @param name of the command within the run */
	String with(String words, String name) {
		return Stream.of(bindings.getBindings())
				.filter(each -> each.getParameterizedCommand() != null
						&& each.getParameterizedCommand().getId().equals(COMMAND + name))
				.map(Binding::getTriggerSequence).findFirst().map(keys -> words + " (" + keys.format() + ")").orElse(words); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
