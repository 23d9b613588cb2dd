package org.frisket.ui.sheets.internal.sheets;

import java.util.Map;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.menus.UIElement;
import org.frisket.ui.views.Views;

/**
 * Shows something on the sheets or hides it; its menu item says which. What it is, is named after the class in the
 * contribution.
 */
public final class ShownHandler extends AbstractHandler implements IExecutableExtension, IElementUpdater {

	private SheetPrints.Shown what;
	private String command;

	@Override
	public void setInitializationData(IConfigurationElement element, String property, Object data) {
		what = SheetPrints.Shown.valueOf(String.valueOf(data));
		command = element.getAttribute("commandId"); //$NON-NLS-1$
	}

	@Override
	public Object execute(ExecutionEvent event) {
		if (HandlerUtil.getActivePart(event) instanceof SheetsView view) {
			view.prints().toggle(what);
			PlatformUI.getWorkbench().getService(ICommandService.class).refreshElements(command, null);
		}
		return null;
	}

	@Override
	@SuppressWarnings("rawtypes")
	public void updateElement(UIElement element, Map parameters) {
		IWorkbenchWindow window = element.getServiceLocator().getService(IWorkbenchWindow.class);
		if (window != null && window.getActivePage() != null
				&& window.getActivePage().findView(Views.SHEETS_ID) instanceof SheetsView view) {
			element.setChecked(view.prints().isShown(what));
		}
	}
}
