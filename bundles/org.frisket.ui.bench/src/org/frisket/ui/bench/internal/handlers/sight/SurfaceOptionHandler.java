package org.frisket.ui.bench.internal.handlers.sight;

import java.util.Map;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;
import org.frisket.ui.bench.internal.surface.SurfaceOption;

/** Switches an option of the surface on and off; its menu item shows which. The option is named behind the class. */
public final class SurfaceOptionHandler extends AbstractHandler implements IExecutableExtension, IElementUpdater {

	private SurfaceOption option;
	private String command;
	private Runnable unwatched = () -> { };

	@Override
	public void setInitializationData(IConfigurationElement configuration, String property, Object data)
			throws CoreException {
		option = SurfaceOption.valueOf(String.valueOf(data));
		command = configuration.getAttribute("commandId"); //$NON-NLS-1$
		unwatched = SurfaceOption.whenChanged(() -> Display.getDefault().asyncExec(this::refreshItems));
	}

	private void refreshItems() {
		if (PlatformUI.isWorkbenchRunning()) {
			PlatformUI.getWorkbench().getService(ICommandService.class).refreshElements(command, null);
		}
	}

	@Override
	public Object execute(ExecutionEvent event) {
		option.set(!option.isOn());
		return null;
	}

	@Override
	@SuppressWarnings("rawtypes")
	public void updateElement(UIElement element, Map parameters) {
		element.setChecked(option.isOn());
	}

	@Override
	public void dispose() {
		unwatched.run();
		super.dispose();
	}
}
