package org.frisket.ui.orders.internal.book;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;

import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.frisket.orders.Entry;
import org.frisket.orders.NewOrder;
import org.frisket.orders.desk.BookQuery;
import org.frisket.orders.desk.SampleStudio;
import org.frisket.orders.desk.SavedFilter;
import org.frisket.orders.desk.SavedFilters;
import org.frisket.studio.Studio;
import org.frisket.ui.orders.Orders;
import org.frisket.ui.orders.internal.OpenJob;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.studio.StepUndo;
import org.frisket.ui.studio.StoreJob;

/** What is done at the order book. */
final class BookActions {

	private final BookView view;
	private final StageHistory history = new StageHistory();
	private final StepUndo undo;

	BookActions(BookView view) {
		this.view = view;
		undo = new StepUndo(view.getSite(), history.steps(this::moved));
	}

	private Shell window() {
		return view.getSite().getShell();
	}

	StageHistory history() {
		return history;
	}

	/** Gives the table its menu, in which others may have entries. @param jobs those that the menu is about */
	void menu(ISelectionProvider jobs) {
		MenuManager menu = new MenuManager();
		menu.add(new GroupMarker("jobs")); //$NON-NLS-1$
		menu.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
		NatTable table = view.grid().table();
		table.setMenu(menu.createContextMenu(table));
		view.getSite().registerContextMenu(Orders.BOOK_ID, menu, jobs);
	}

	/** Asks what is ordered and takes it into the book. */
	void order() {
		new NewOrderDialog(window(), LocalDate.now(), this::order).open();
	}

	private void order(NewOrder order) {
		OrderDesk.get().change(Messages.BookActions_ordering, () -> OrderDesk.book().add(order, OrderDesk.person()),
				added -> view.selectWhenSeen(added.number()), view::say);
	}

	/** Puts a dozen invented jobs into the book. */
	void fillWithSamples() {
		LocalDate today = LocalDate.now();
		OrderDesk.get().change(Messages.BookActions_filling,
				() -> SampleStudio.fill(OrderDesk.book(), today, OrderDesk.person()),
				filled -> view.say(""), view::say); //$NON-NLS-1$
	}

	/** Opens the job that the keys start from. */
	void open() {
		List<Entry> jobs = view.grid().selection();
		if (!jobs.isEmpty()) {
			open(jobs.get(0));
		}
	}

	void open(Entry job) {
		OpenJob.run(view.getSite(), job.number(), view::say);
	}

	/** Asks to which stage the selected jobs are to go, and brings them there. */
	void stage() {
		List<Entry> jobs = view.grid().selection();
		if (jobs.isEmpty()) {
			view.status(Messages.BookActions_selectFirst);
			return;
		}
		new StageDialog(window(), jobs,
				dialog -> history.move(jobs, dialog.stage(), dialog.remark(), this::moved)).open();
	}

	private void moved(List<StageMoves.Refused> refused) {
		undo.refresh();
		if (view.isOpen() && !refused.isEmpty()) {
			new RefusedDialog(window(), refused).open();
		}
	}

	/** The jobs are of another studio. */
	void otherStudio() {
		history.forget();
		undo.refresh();
	}

	/** Asks by what the jobs are to be sorted. */
	void sort() {
		NatTable table = view.grid().table();
		int below = table.getStartYOfRowPosition(1);
		new SortMenu(table, view.query(), column -> view.show(view.query().sortedBy(column)))
				.open(table.toDisplay(view.grid().startOf(view.query().column()), below));
	}

	/** Asks for a name and keeps what is asked for now under it. */
	void saveFilter() {
		String before = view.bar().shown().map(SavedFilter::name).orElse(""); //$NON-NLS-1$
		BookQuery query = view.query();
		InputDialog dialog = new InputDialog(window(), Messages.BookActions_saveTitle, Messages.BookActions_saveName,
				before, name -> {
					String objection = SavedFilters.objection(name);
					return objection.isEmpty() ? null : objection;
				}) {
			@Override
			protected void okPressed() {
				String name = getValue().strip();
				super.okPressed();
				filters(Messages.BookActions_saving, all -> all.put(new SavedFilter(name, query)));
			}
		};
		dialog.setBlockOnOpen(false);
		dialog.open();
	}

	/** Forgets the studio's filter that is seen. */
	void removeFilter() {
		view.bar().shown().ifPresentOrElse(
				filter -> filters(Messages.BookActions_removing, all -> all.remove(filter.name())),
				() -> view.status(Messages.BookActions_noOwnFilter));
	}

	/** Reads the filters of the studio, in a while. */
	void readFilters() {
		filters(Messages.BookActions_reading, all -> {
			// nothing is changed
		});
	}

	private interface Change {
		void of(SavedFilters filters) throws IOException;
	}

	private void filters(String label, Change change) {
		StoreJob.Task<List<SavedFilter>> task = () -> {
			SavedFilters all = new SavedFilters(Studio.folder());
			change.of(all);
			return all.list();
		};
		new StoreJob<>(label, task, view::show, view::say).schedule();
	}
}
