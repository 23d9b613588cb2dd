package org.frisket.app.internal.tour;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.keys.IBindingService;
import org.frisket.model.Jobs;
import org.frisket.model.Wording;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.bench.UntitledInput;

/** The tour in a window. It goes on however the window is used meanwhile, and ends when it is told to or the window goes. */
public final class Tour implements Callout.Ways {

	private static final String KEY = Tour.class.getName();

	private final IWorkbenchWindow window;
	private final Shell shell;
	private final Listener resized = event -> placeLater();
	private Callout callout;
	private Frame frame;
	private TourStep step;

	private Tour(IWorkbenchWindow window) {
		this.window = window;
		shell = window.getShell();
		shell.setData(KEY, this);
		shell.addListener(SWT.Resize, resized);
	}

	/** Begins at the first step; gives the keys back to a tour that is under way already. */
	public static void start(IWorkbenchWindow window) throws PartInitException {
		if (window.getShell().getData(KEY) instanceof Tour running) {
			running.callout.setFocus();
			return;
		}
		IWorkbenchPage page = window.getActivePage();
		page.openEditor(UntitledInput.SAMPLE, Bench.EDITOR_ID);
		TourOffer.withdraw(window);
		new Tour(window).show(TourStep.WORDING);
	}

	/** Whether a tour is under way in a window. */
	public static boolean isUnderWay(IWorkbenchWindow window) {
		return window.getShell().getData(KEY) instanceof Tour;
	}

	/** What the step tells that is shown in a window; empty if none is. */
	public static String title(IWorkbenchWindow window) {
		return window.getShell().getData(KEY) instanceof Tour tour ? tour.step.title() : ""; //$NON-NLS-1$
	}

	private void show(TourStep newStep) {
		step = newStep;
		clear();
		prepare();
		frame = new Frame(shell);
		callout = new Callout(shell, step, window.getService(IBindingService.class), this);
		place();
		callout.setFocus();
		// parts that have just been brought to the front have no size yet
		placeLater();
	}

	private void prepare() {
		try {
			if (step.view() != null) {
				window.getActivePage().showView(step.view(), null, IWorkbenchPage.VIEW_VISIBLE);
			}
		} catch (PartInitException e) {
			// the step is told all the same, beside the bench
		}
		JobOnBench bench = bench();
		if (bench != null && step == TourStep.PROPERTIES) {
			bench.select(Jobs.elements(bench.job()).stream().filter(Wording.class::isInstance).toList());
		}
	}

	private JobOnBench bench() {
		IEditorPart editor = window.getActivePage().getActiveEditor();
		return editor == null ? null : Adapters.adapt(editor, JobOnBench.class);
	}

	private void placeLater() {
		shell.getDisplay().asyncExec(() -> {
			if (callout != null && !callout.isDisposed()) {
				place();
			}
		});
	}

	private void place() {
		Rectangle thing = thing();
		frame.placeAround(thing);
		callout.placeBeside(thing);
	}

	private Rectangle thing() {
		IWorkbenchPage page = window.getActivePage();
		Rectangle fallback = shell.getClientArea();
		if (step == TourStep.EXPORT) {
			return Places.ofExport(window).orElse(new Rectangle(0, 0, fallback.width, 0));
		}
		IWorkbenchPart part = step.view() == null ? page.getActiveEditor() : page.findView(step.view());
		return Places.of(part).orElse(fallback);
	}

	@Override
	public void next() {
		if (step.isLast()) {
			end();
		} else {
			show(step.next());
		}
	}

	@Override
	public void back() {
		show(step.back());
	}

	@Override
	public void end() {
		clear();
		shell.setData(KEY, null);
		shell.removeListener(SWT.Resize, resized);
		if (window.getActivePage() != null && window.getActivePage().getActiveEditor() != null) {
			window.getActivePage().activate(window.getActivePage().getActiveEditor());
			window.getActivePage().getActiveEditor().setFocus();
		}
	}

	private void clear() {
		if (callout != null) {
			callout.dispose();
			frame.dispose();
			callout = null;
			// while it goes, its buttons pass the focus on to each other
			window.getService(IBindingService.class).setKeyFilterEnabled(true);
		}
	}
}
