package org.frisket.ui.orders.internal.customers;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.services.IServiceLocator;
import org.frisket.orders.Entry;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.Customers;
import org.frisket.orders.paper.Days;
import org.frisket.orders.paper.StageWords;
import org.frisket.studio.Studio;
import org.frisket.ui.orders.internal.EntrySelection;
import org.frisket.ui.orders.internal.Named;
import org.frisket.ui.orders.internal.OpenJob;
import org.frisket.ui.studio.StoreJob;

/** The jobs of a customer, the latest number first; the selected one is published. */
final class CustomerJobs {

	private static final int[] WIDTHS_PX = { 80, 110, 200, 120 };

	private final Table table;
	private final EntrySelection selection = new EntrySelection();
	private final Consumer<String> trouble;
	private List<Entry> entries = List.of();
	private String of = ""; //$NON-NLS-1$

	/** @param trouble told why they cannot be read, or one cannot be opened */
	CustomerJobs(Composite parent, IServiceLocator services, Consumer<String> trouble) {
		this.trouble = trouble;
		table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
		table.setHeaderVisible(true);
		table.setToolTipText(Messages.CustomersView_jobs);
		Named.as(Messages.CustomersView_jobs, table);
		String[] titles = { Messages.CustomersView_number, Messages.CustomersView_due, Messages.CustomersView_title,
				Messages.CustomersView_stage };
		for (int i = 0; i < titles.length; i++) {
			TableColumn column = new TableColumn(table, i == 0 ? SWT.RIGHT : SWT.LEFT);
			column.setText(titles[i]);
			column.setWidth(WIDTHS_PX[i]);
		}
		table.addListener(SWT.Selection, event -> selection
				.select(table.getSelectionIndex() < 0 ? List.of() : List.of(entries.get(table.getSelectionIndex()))));
		table.addListener(SWT.DefaultSelection, event -> {
			if (table.getSelectionIndex() >= 0) {
				OpenJob.run(services, entries.get(table.getSelectionIndex()).number(), trouble);
			}
		});
	}

	Table table() {
		return table;
	}

	EntrySelection selection() {
		return selection;
	}

	/** Reads them, in a while. @param customer null for nobody */
	void show(Customer customer) {
		of = customer == null ? "" : customer.id(); //$NON-NLS-1$
		String asked = of;
		if (customer == null) {
			fill(List.of());
			return;
		}
		StoreJob<List<Entry>> job = new StoreJob<>(Messages.CustomerDesk_reading,
				() -> new Customers(Studio.folder()).jobs(customer), found -> {
					if (!table.isDisposed() && of.equals(asked)) {
						fill(found);
					}
				}, trouble);
		job.setSystem(true);
		job.schedule();
	}

	private void fill(List<Entry> found) {
		if (found.equals(entries)) {
			return;
		}
		entries = found;
		table.removeAll();
		for (Entry entry : found) {
			new TableItem(table, SWT.NONE).setText(new String[] { Long.toString(entry.number()),
					entry.due().map(Days::brief).orElse(""), entry.title(), StageWords.of(entry.stage()) }); //$NON-NLS-1$
		}
		selection.select(List.of());
	}
}
