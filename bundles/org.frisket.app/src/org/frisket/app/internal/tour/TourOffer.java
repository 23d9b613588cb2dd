package org.frisket.app.internal.tour;

import java.util.Optional;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.e4.ui.model.application.ui.MUIElement;
import org.eclipse.e4.ui.model.application.ui.basic.MWindow;
import org.eclipse.e4.ui.workbench.modeling.EModelService;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PerspectiveAdapter;
import org.eclipse.ui.statushandlers.StatusManager;
import org.osgi.service.prefs.BackingStoreException;

/** A quiet bar over the empty bench that offers the tour, at the first start and never again. It goes when work begins. */
public final class TourOffer {

	private static final String NODE = "org.frisket.app"; //$NON-NLS-1$
	private static final String OFFERED = "tourOffered"; //$NON-NLS-1$
	private static final String KEY = TourOffer.class.getName();

	private final IWorkbenchWindow window;
	private final Overlay bar;
	private final Listener resized = event -> placeLater();
	/** What it lies over; its size follows that of the window only after a while. */
	private Control watched;
	private final IPartListener2 work = new IPartListener2() {

		@Override
		public void partOpened(IWorkbenchPartReference part) {
			if (part instanceof IEditorReference) {
				close();
			}
		}
	};

	private final PerspectiveAdapter side = new PerspectiveAdapter() {

		@Override
		public void perspectiveActivated(IWorkbenchPage page, IPerspectiveDescriptor perspective) {
			placeLater();
		}
	};

	private TourOffer(IWorkbenchWindow window) {
		this.window = window;
		Shell shell = window.getShell();
		bar = new Overlay(shell, 3);
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER)
				.applyTo(bar.label(Messages.TourOffer_text, SWT.WRAP));
		Overlay.button(bar, Messages.TourOffer_show, this::take);
		Overlay.button(bar, Messages.TourOffer_notNow, this::close);
		shell.setData(KEY, this);
		shell.addListener(SWT.Resize, resized);
		window.getPartService().addPartListener(work);
		window.addPerspectiveListener(side);
		placeLater();
	}

	/** Offers the tour if it was never offered and nothing is open. */
	public static void make(IWorkbenchWindow window) {
		IEclipsePreferences preferences = InstanceScope.INSTANCE.getNode(NODE);
		if (preferences.getBoolean(OFFERED, false) || window.getActivePage() == null
				|| window.getActivePage().getEditorReferences().length > 0) {
			return;
		}
		preferences.putBoolean(OFFERED, true);
		try {
			preferences.flush();
		} catch (BackingStoreException e) {
			ILog.of(TourOffer.class).warn("the tour will be offered again", e); //$NON-NLS-1$
		}
		new TourOffer(window);
	}

	static void withdraw(IWorkbenchWindow window) {
		if (window.getShell().getData(KEY) instanceof TourOffer offer) {
			offer.close();
		}
	}

	/** Whether it is offered in a window now. */
	public static boolean isMade(IWorkbenchWindow window) {
		return window.getShell().getData(KEY) instanceof TourOffer;
	}

	/** Whether it is seen just now. */
	public static boolean isSeen(IWorkbenchWindow window) {
		return window.getShell().getData(KEY) instanceof TourOffer offer && offer.bar.isVisible();
	}

	/** Whether it begins where the bench begins, as large as the window is now. */
	public static boolean isInPlace(IWorkbenchWindow window) {
		return window.getShell().getData(KEY) instanceof TourOffer offer && offer.editorArea()
				.map(area -> area.toDisplay(0, 0).equals(offer.bar.toDisplay(0, 0))).orElse(false);
	}

	private void take() {
		try {
			Tour.start(window);
		} catch (PartInitException e) {
			StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
		}
	}

	private void close() {
		if (!bar.isDisposed()) {
			window.getShell().removeListener(SWT.Resize, resized);
			if (watched != null && !watched.isDisposed()) {
				watched.removeListener(SWT.Resize, resized);
			}
			window.getShell().setData(KEY, null);
			window.getPartService().removePartListener(work);
			window.removePerspectiveListener(side);
			bar.dispose();
		}
	}

	private void placeLater() {
		window.getShell().getDisplay().asyncExec(() -> {
			if (!bar.isDisposed()) {
				place();
			}
		});
	}

	private void place() {
		Optional<Control> area = editorArea();
		area.filter(control -> control != watched).ifPresent(this::watch);
		Point place = area.map(control -> window.getShell().toControl(control.toDisplay(0, 0))).orElse(new Point(0, 0));
		// it is about the bench, and would hide the days of the week on the order desk
		bar.setVisible(window.getActivePage() != null && window.getActivePage().isEditorAreaVisible());
		bar.place(place.x, place.y, area.map(control -> control.getSize().x).orElse(SWT.DEFAULT));
	}

	private void watch(Control area) {
		if (watched != null && !watched.isDisposed()) {
			watched.removeListener(SWT.Resize, resized);
		}
		area.addListener(SWT.Resize, resized);
		watched = area;
	}

	private Optional<Control> editorArea() {
		MUIElement area = window.getService(EModelService.class).find(IPageLayout.ID_EDITOR_AREA,
				window.getService(MWindow.class));
		return area != null && area.getWidget() instanceof Control control ? Optional.of(control) : Optional.empty();
	}
}
