package org.frisket.ui.orders.internal.book;

import java.util.function.Consumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.core.runtime.Status;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.ui.orders.Orders;

/** A command at the order book, which is shown first; which one is named after the class in the contribution. */
public final class BookHandler extends AbstractHandler implements IExecutableExtension {

	private Consumer<BookView> action;

	@Override
	public void setInitializationData(IConfigurationElement element, String property, Object data)
			throws CoreException {
		action = switch (String.valueOf(data)) {
		case "order" -> view -> view.actions().order(); //$NON-NLS-1$
		case "open" -> view -> view.actions().open(); //$NON-NLS-1$
		case "stage" -> view -> view.actions().stage(); //$NON-NLS-1$
		case "sort" -> view -> view.actions().sort(); //$NON-NLS-1$
		case "find" -> view -> view.bar().find(); //$NON-NLS-1$
		case "clear" -> BookView::clear; //$NON-NLS-1$
		case "saveFilter" -> view -> view.actions().saveFilter(); //$NON-NLS-1$
		case "removeFilter" -> view -> view.actions().removeFilter(); //$NON-NLS-1$
		default -> throw new CoreException(
				Status.error("no command of the order book is called " + data)); //$NON-NLS-1$
		};
	}

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		try {
			action.accept((BookView) HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage()
					.showView(Orders.BOOK_ID));
		} catch (PartInitException e) {
			throw new ExecutionException(e.getMessage(), e);
		}
		return null;
	}
}
