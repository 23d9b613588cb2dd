package org.frisket.ui.orders.internal.keep;

import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.WorkbenchException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.orders.Entry;
import org.frisket.studio.Studio;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.PlaceInput;
import org.frisket.ui.orders.Orders;

/** Lays a job of the order book on the bench: the one whose number is given, or the one that is selected. */
public final class OpenJobHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		Optional<Long> number = number(event);
		if (number.isPresent()) {
			open(HandlerUtil.getActiveWorkbenchWindowChecked(event), number.get());
		}
		return null;
	}

	private static Optional<Long> number(ExecutionEvent event) {
		String given = event.getParameter(Orders.OPEN_JOB_NUMBER);
		if (given == null) {
			return selected(HandlerUtil.getCurrentSelection(event)).map(Entry::number);
		}
		try {
			return Optional.of(Long.valueOf(given.strip()));
		} catch (NumberFormatException e) {
			return Optional.empty();
		}
	}

	private static Optional<Entry> selected(ISelection selection) {
		return selection instanceof IStructuredSelection some && some.getFirstElement() instanceof Entry entry
				? Optional.of(entry) : Optional.empty();
	}

	/** The bench is there at once; the job comes when the order book gives it. */
	static void open(IWorkbenchWindow window, long number) throws ExecutionException {
		try {
			IWorkbenchPage page = window.getActivePage();
			if (PlatformUI.getWorkbench().getPerspectiveRegistry()
					.findPerspectiveWithId(Orders.BENCH_PERSPECTIVE_ID) != null) {
				page = PlatformUI.getWorkbench().showPerspective(Orders.BENCH_PERSPECTIVE_ID, window);
			}
			page.openEditor(new PlaceInput(new BookPlace(Studio.folder().path(), number)), Bench.EDITOR_ID);
		} catch (WorkbenchException e) {
			throw new ExecutionException(e.getMessage(), e);
		}
	}
}
