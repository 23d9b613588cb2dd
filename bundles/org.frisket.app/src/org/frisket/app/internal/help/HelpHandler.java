package org.frisket.app.internal.help;

import java.util.Map;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.help.HelpPages;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.material.Material;
import org.frisket.ui.views.Views;

/** Opens the page about what is worked in; the first one while that is help itself. */
public final class HelpHandler extends AbstractHandler {

	private static final Map<String, String> PAGES = Map.of(Bench.EDITOR_ID, "bench", //$NON-NLS-1$
			Views.MAKEREADY_ID, "makeready", Views.STACK_ID, "stack", //$NON-NLS-1$ //$NON-NLS-2$
			Views.PROPERTIES_ID, "properties", Views.TYPE_CASE_ID, "typecase", //$NON-NLS-1$ //$NON-NLS-2$
			Material.TEST_SHEET_ID, "testsheets", Material.MACHINES_ID, "testsheets"); //$NON-NLS-1$ //$NON-NLS-2$
	private static final String TYPING_PAGE = "wording"; //$NON-NLS-1$

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
		String page = page(window, HandlerUtil.getActivePart(event));
		try {
			IWorkbenchPage workbenchPage = window.getActivePage();
			((HelpView) workbenchPage.showView(HelpView.ID)).show(page);
		} catch (PartInitException e) {
			throw new ExecutionException(e.getMessage(), e);
		}
		return null;
	}

	private static String page(IWorkbenchWindow window, IWorkbenchPart part) {
		if (window.getService(IContextService.class).getActiveContextIds().contains(Bench.TYPING_CONTEXT_ID)) {
			return TYPING_PAGE;
		}
		return part == null ? HelpPages.FIRST : PAGES.getOrDefault(part.getSite().getId(), HelpPages.FIRST);
	}
}
