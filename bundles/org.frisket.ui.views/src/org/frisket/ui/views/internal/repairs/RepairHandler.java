package org.frisket.ui.views.internal.repairs;

import java.util.Locale;
import java.util.function.Consumer;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.ui.views.Views;

/** What is done with repairs by command; which one is named after the class in the contribution. */
public final class RepairHandler extends AbstractHandler implements IExecutableExtension {

	private enum Act {
		OPEN, NEXT, PREVIOUS, COMPARE, APPLY
	}

	private Act act;

	@Override
	public void setInitializationData(IConfigurationElement element, String property, Object data) {
		act = Act.valueOf(String.valueOf(data).toUpperCase(Locale.ROOT));
	}

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage();
		if (act == Act.OPEN) {
			try {
				((RepairsView) page.showView(Views.REPAIRS_ID)).begin();
			} catch (PartInitException e) {
				throw new ExecutionException(e.getMessage(), e);
			}
			return null;
		}
		Consumer<RepairsView> does = switch (act) {
		case NEXT -> view -> view.step(1);
		case PREVIOUS -> view -> view.step(-1);
		case COMPARE -> view -> view.compare(event.getTrigger() instanceof Event trigger ? trigger : null);
		default -> RepairsView::apply;
		};
		if (page.findView(Views.REPAIRS_ID) instanceof RepairsView view) {
			does.accept(view);
		}
		return null;
	}
}
