package org.frisket.ui.orders.internal.book;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Consumer;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.fieldassist.ContentProposalAdapter;
import org.eclipse.jface.fieldassist.SimpleContentProposalProvider;
import org.eclipse.jface.fieldassist.TextContentAdapter;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.orders.NewOrder;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.Customers;
import org.frisket.orders.desk.DueDay;
import org.frisket.orders.paper.Days;
import org.frisket.studio.Studio;
import org.frisket.ui.orders.internal.Named;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.orders.internal.Words;
import org.frisket.ui.studio.StoreJob;

/** Asks what somebody orders. Known customers are offered while a name is typed. */
final class NewOrderDialog extends TitleAreaDialog {

	private static final int MARGIN_PX = 12;
	private static final int SPACE_PX = 8;
	private static final int WIDTH_PX = 300;
	private static final int NOTES_PX = 72;

	private final LocalDate today;
	private final Consumer<NewOrder> done;
	private final SimpleContentProposalProvider known = new SimpleContentProposalProvider();
	private Text title;
	private Text customer;
	private Text due;
	private Label day;
	private Text quantity;
	private Text notes;

	/** @param done told what is ordered */
	NewOrderDialog(Shell parent, LocalDate today, Consumer<NewOrder> done) {
		super(parent);
		setBlockOnOpen(false);
		this.done = done;
		this.today = today;
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.NewOrderDialog_title);
	}

	@Override
	protected boolean isResizable() {
		return true;
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(MARGIN_PX, MARGIN_PX).spacing(SPACE_PX, SPACE_PX)
				.applyTo(area);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		setTitle(Messages.NewOrderDialog_title);
		setMessage(Messages.NewOrderDialog_message);
		title = field(area, Messages.NewOrderDialog_what);
		customer = field(area, Messages.NewOrderDialog_customer);
		due = field(area, Messages.NewOrderDialog_due);
		new Label(area, SWT.NONE);
		day = new Label(area, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(day);
		due.addListener(SWT.Modify, event -> tellDay());
		tellDay();
		quantity = field(area, Messages.NewOrderDialog_quantity);
		quantity.setText("1"); //$NON-NLS-1$
		// what is typed takes the place of the usual one
		quantity.addListener(SWT.FocusIn, event -> quantity.selectAll());
		Label label = new Label(area, SWT.NONE);
		label.setText(Messages.NewOrderDialog_notes);
		GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(label);
		notes = new Text(area, SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
		Named.as(Messages.NewOrderDialog_notes, notes);
		GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH_PX, NOTES_PX).applyTo(notes);
		notes.addListener(SWT.Traverse, event -> event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT
				|| event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
		known.setFiltering(true);
		known.setProposals(names(OrderDesk.get().jobs().stream().map(job -> job.customer()).toList()));
		ContentProposalAdapter offer = new ContentProposalAdapter(customer, new TextContentAdapter(), known, null,
				null);
		// else the key would lead into the names that are offered
		customer.addListener(SWT.Traverse, event -> {
			if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
				offer.closeProposalPopup();
				event.doit = true;
			}
		});
		offer.setProposalAcceptanceStyle(ContentProposalAdapter.PROPOSAL_REPLACE);
		new StoreJob<List<Customer>>(Messages.NewOrderDialog_customers, () -> new Customers(Studio.folder()).list(),
				all -> known.setProposals(names(all.stream().map(Customer::name).toList())), refused -> {
					// those of the jobs are known
				}).schedule();
		title.setFocus();
		return area;
	}

	private static String[] names(List<String> names) {
		TreeSet<String> sorted = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
		names.stream().filter(name -> !name.isBlank()).forEach(sorted::add);
		return sorted.toArray(String[]::new);
	}

	private static Text field(Composite area, String name) {
		new Label(area, SWT.NONE).setText(name);
		Text field = new Text(area, SWT.BORDER);
		Named.as(name, field);
		GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH_PX, SWT.DEFAULT).applyTo(field);
		return field;
	}

	/** Says which day it is that was typed. */
	private void tellDay() {
		try {
			day.setText(day().map(Days::whole).orElse(Messages.NewOrderDialog_dueHint));
			setErrorMessage(null);
		} catch (IllegalArgumentException none) {
			day.setText(Messages.NewOrderDialog_dueHint);
		}
	}

	private Optional<LocalDate> day() {
		return DueDay.parse(due.getText(), today, Locale.getDefault());
	}

	private int copies() {
		try {
			return Integer.parseInt(quantity.getText().strip());
		} catch (NumberFormatException none) {
			throw new IllegalArgumentException(Messages.NewOrderDialog_noNumber, none);
		}
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.NewOrderDialog_take, true);
		createButton(parent, IDialogConstants.CANCEL_ID, Words.CANCEL, false);
	}

	@Override
	protected void okPressed() {
		try {
			NewOrder order = new NewOrder(title.getText(), customer.getText(), day(), copies(), notes.getText());
			super.okPressed();
			done.accept(order);
		} catch (IllegalArgumentException wrong) {
			setErrorMessage(Words.sentence(wrong.getMessage()));
		}
	}
}
