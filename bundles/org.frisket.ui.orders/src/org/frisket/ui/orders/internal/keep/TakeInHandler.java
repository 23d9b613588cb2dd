package org.frisket.ui.orders.internal.keep;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.JobHome;
import org.frisket.orders.Entry;
import org.frisket.prepare.pictures.LinkedPictures;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.JobPlace;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.orders.internal.Words;

/**
 * Puts the job in front into the order book, as it is on the bench; the bench shows the job of the book from then on.
 */
public final class TakeInHandler extends AbstractHandler {

	@Override
	public void setEnabled(Object evaluationContext) {
		IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
		IEditorPart editor = window == null || window.getActivePage() == null ? null
				: window.getActivePage().getActiveEditor();
		setBaseEnabled(editor != null && canBeTaken(editor) && Adapters.adapt(editor, JobOnBench.class) != null);
	}

	/** What is kept in an order book already stays there. */
	private static boolean canBeTaken(IEditorPart editor) {
		JobPlace place = Adapters.adapt(editor.getEditorInput(), JobPlace.class);
		return place != null && place.isLeftForFiles();
	}

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IEditorPart editor = HandlerUtil.getActiveEditor(event);
		JobOnBench bench = editor == null ? null : Adapters.adapt(editor, JobOnBench.class);
		if (bench == null || !canBeTaken(editor)) {
			return null;
		}
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
		try {
			Job job = JobFile.load(JobFile.toBytes(bench.job()), editor.getTitle());
			JobHome.of(bench.job()).ifPresent(home -> JobHome.set(job, home));
			List<String> left = new CopyOnWriteArrayList<>();
			OrderDesk.get().change(Messages.TakeInHandler_name, () -> {
				// the book lies beside none of their files
				left.addAll(LinkedPictures.keep(job));
				return OrderDesk.book().takeIn(job, OrderDesk.person());
			}, entry -> {
				show(window, editor, entry);
				tellLeft(window, left);
			}, reason -> refused(window, reason));
		} catch (IOException e) {
			refused(window, e.getMessage());
		}
		return null;
	}

	private static void show(IWorkbenchWindow window, IEditorPart editor, Entry entry) {
		try {
			OpenJobHandler.open(window, entry.number());
			editor.getSite().getPage().closeEditor(editor, false);
		} catch (ExecutionException e) {
			ILog.of(TakeInHandler.class).error(e.getMessage(), e);
		}
	}

	private static void tellLeft(IWorkbenchWindow window, List<String> left) {
		if (!left.isEmpty()) {
			MessageDialog.openWarning(window.getShell(), Messages.TakeInHandler_pictures,
					String.join("\n", left.stream().map(Words::sentence).toList())); //$NON-NLS-1$
		}
	}

	private static void refused(IWorkbenchWindow window, String reason) {
		MessageDialog.openError(window.getShell(), Messages.TakeInHandler_refused, reason);
	}
}
