package org.frisket.ui.orders.internal.docket;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.part.ViewPart;
import org.frisket.orders.Entry;
import org.frisket.orders.PaperKind;
import org.frisket.ui.LengthUnit;
import org.frisket.ui.orders.Orders;
import org.frisket.ui.orders.internal.EntrySelection;
import org.frisket.ui.orders.internal.OrderDesk;

/** The docket of the job that is selected anywhere at the order desk. It stays when something else is selected. */
public final class DocketView extends ViewPart implements ISelectionListener {

	public static final String ID = Orders.DOCKET_ID;

	private static final String CONTEXT_ID = "org.frisket.ui.orders.docket.context"; //$NON-NLS-1$
	/** Who goes through a list by arrows does not want each docket on the way. */
	private static final int PAUSE_MS = 80;
	private static final int FULL = 100;

	private final EntrySelection selection = new EntrySelection();
	private final Runnable deskListener = this::deskChanged;
	private DocketPage page;
	private DocketJob working;
	private Sight shown;
	private Runnable unlook;

	@Override
	public void createPartControl(Composite parent) {
		page = new DocketPage(parent);
		getSite().setSelectionProvider(selection);
		getSite().getService(IContextService.class).activateContext(CONTEXT_ID);
		getSite().getWorkbenchWindow().getSelectionService().addSelectionListener(this);
		OrderDesk.get().addListener(deskListener);
		unlook = LengthUnit.whenChanged(() -> page.getDisplay().asyncExec(this::again));
		selectionChanged(null, getSite().getWorkbenchWindow().getSelectionService().getSelection());
	}

	@Override
	public void selectionChanged(IWorkbenchPart part, ISelection selected) {
		if (part != this) {
			entry(selected).filter(entry -> shown == null || !shown.entry().equals(entry)).ifPresent(this::show);
		}
	}

	/** The first of the jobs that are selected; empty if something else is. */
	static Optional<Entry> entry(ISelection selection) {
		return selection instanceof IStructuredSelection structured
				&& structured.getFirstElement() instanceof Entry entry
				? Optional.of(entry)
				: Optional.empty();
	}

	/** Shows the docket of a job, in a while. */
	public void show(Entry entry) {
		boolean same = shown != null && shown.entry().id().equals(entry.id());
		if (!same) {
			page.say("", null); //$NON-NLS-1$
			shown = Sight.of(entry);
			page.show(shown, true);
		}
		if (working != null) {
			working.cancel();
		}
		int density = Math.max(1, Math.round(page.getMonitor().getZoom() / (float) FULL));
		working = new DocketJob(entry, page.pictureWidth(), density, page.getDisplay(), this::seen);
		working.schedule(PAUSE_MS);
		selection.selectOne(entry);
	}

	private void seen(Sight sight) {
		if (page.isDisposed() || shown == null) {
			return;
		}
		// what was shown of the same job stays until there is as much of it again
		boolean less = sight.facts().isEmpty() && sight.trouble().isEmpty() && shown.facts().isPresent();
		shown = less ? new Sight(sight.entry(), sight.history(), sight.papers(), sight.agreement(), shown.facts(),
				shown.picture(), false, "") : sight; //$NON-NLS-1$
		selection.selectOne(shown.entry());
		page.show(shown, false);
	}

	private void again() {
		if (shown != null && !page.isDisposed()) {
			show(shown.entry());
		}
	}

	private void deskChanged() {
		if (shown == null || !OrderDesk.get().isKnown()) {
			return;
		}
		Optional<Entry> now = OrderDesk.get().find(shown.entry().number())
				.filter(entry -> entry.id().equals(shown.entry().id()));
		if (now.isEmpty()) {
			// it is the order book of another studio
			forget();
		} else if (!now.get().equals(shown.entry())) {
			show(now.get());
		}
	}

	private void forget() {
		if (working != null) {
			working.cancel();
		}
		shown = null;
		selection.selectOne(null);
		page.say("", null); //$NON-NLS-1$
		page.show(null, true);
	}

	/** Reads it again, as after a paper was noted, which the list of jobs knows nothing of. */
	void refresh() {
		again();
	}

	/** The job whose docket is shown. */
	public Optional<Entry> entry() {
		return Optional.ofNullable(shown).map(Sight::entry);
	}

	/** Whether all of it is there. */
	public boolean isWhole() {
		return shown != null && shown.whole();
	}

	/** Writes a paper of the job; a line says what came of it. */
	public void write(PaperKind kind, Path file) {
		entry().ifPresent(entry -> PaperRun.write(this, entry, kind, file));
	}

	/** What was said last. */
	public String said() {
		return page.said();
	}

	/** @param file that can be opened from there; null for none */
	void say(String text, Path file) {
		if (!page.isDisposed()) {
			page.say(text, file);
			getViewSite().getActionBars().getStatusLineManager().setMessage(text);
		}
	}

	public Composite page() {
		return page;
	}

	@Override
	public void setFocus() {
		page.setFocus();
	}

	@Override
	public void dispose() {
		if (working != null) {
			working.cancel();
		}
		if (unlook != null) {
			unlook.run();
		}
		OrderDesk.get().removeListener(deskListener);
		getSite().getWorkbenchWindow().getSelectionService().removeSelectionListener(this);
		super.dispose();
	}
}
