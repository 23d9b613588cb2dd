package org.frisket.ui.orders.internal.customers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.part.ViewPart;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.CustomerField;
import org.frisket.orders.customers.LikeCustomers;
import org.frisket.studio.NameKey;
import org.frisket.ui.orders.internal.Named;
import org.frisket.ui.studio.StepUndo;
import org.frisket.ui.views.internal.TextKeys;

/** Whom the studio works for: looked for as one types, with what is known of each and its jobs. */
public final class CustomersView extends ViewPart {

	private static final String CONTEXT_ID = "org.frisket.ui.orders.customers.context"; //$NON-NLS-1$
	private static final int SPACE_PX = 4;
	private static final int JOBS_PX = 90;
	private static final int[] SHARES = { 2, 3 };

	private final CustomerDesk desk = CustomerDesk.get();
	private final Runnable changed = this::customersChanged;
	private final CustomerActions actions = new CustomerActions(this);
	private StepUndo undo;
	private Text filter;
	private Table list;
	private Link alike;
	private CustomerForm form;
	private ScrolledComposite scroll;
	private Button keep;
	private Button discard;
	private CustomerJobs jobs;
	private Label notice;
	private List<Customer> listed = List.of();
	private Customer shown;
	private String wanted = ""; //$NON-NLS-1$

	@Override
	public void createPartControl(Composite parent) {
		Composite area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(SPACE_PX, SPACE_PX).spacing(0, SPACE_PX).applyTo(area);
		SashForm halves = new SashForm(area, SWT.HORIZONTAL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(halves);
		createList(halves);
		createDetails(halves);
		halves.setWeights(SHARES);
		notice = new Label(area, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(notice);
		getSite().setSelectionProvider(jobs.selection());
		getSite().getService(IContextService.class).activateContext(CONTEXT_ID);
		new TextKeys(getSite()).activate();
		undo = new StepUndo(getSite(), CustomerDesk.get().steps(message -> say(message.orElse("")))); //$NON-NLS-1$
		desk.addListener(changed);
		customersChanged();
	}

	private void createList(Composite parent) {
		Composite half = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, SPACE_PX).applyTo(half);
		filter = new Text(half, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
		filter.setMessage(Messages.CustomersView_filter);
		Named.as(Messages.CustomersView_filter, filter);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
		filter.addListener(SWT.Modify, event -> find());
		filter.addListener(SWT.KeyDown, event -> {
			if (event.keyCode == SWT.ARROW_DOWN && list.getItemCount() > 0) {
				event.doit = false;
				list.setFocus();
			}
		});
		list = new Table(half, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
		list.setToolTipText(Messages.CustomersView_name);
		Named.as(Messages.CustomersView_name, list);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(list);
		TableColumn name = new TableColumn(list, SWT.NONE);
		list.addListener(SWT.Resize, event -> name.setWidth(list.getClientArea().width));
		list.addListener(SWT.Selection, event -> chosen());
		alike = new Link(half, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).hint(80, SWT.DEFAULT).applyTo(alike);
		alike.addListener(SWT.Selection, event -> actions.mergeLikeliest());
	}

	private void createDetails(Composite parent) {
		Composite half = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, SPACE_PX).extendedMargins(2 * SPACE_PX, 0, 0, 0).applyTo(half);
		scroll = new ScrolledComposite(half, SWT.V_SCROLL);
		scroll.setExpandHorizontal(true);
		scroll.setExpandVertical(true);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(scroll);
		form = new CustomerForm(scroll, this::typed, () -> actions.keep());
		scroll.setContent(form.control());
		scroll.setMinHeight(form.control().computeSize(SWT.DEFAULT, SWT.DEFAULT).y);
		Composite buttons = new Composite(half, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(SPACE_PX, 0).applyTo(buttons);
		keep = button(buttons, Messages.CustomersView_keep, () -> actions.keep());
		discard = button(buttons, Messages.CustomersView_discard, () -> {
			form.show(shown);
			typed();
			say(""); //$NON-NLS-1$
		});
		jobs = new CustomerJobs(half, getSite(), this::say);
		GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, JOBS_PX).applyTo(jobs.table());
	}

	private static Button button(Composite parent, String text, Runnable pressed) {
		Button button = new Button(parent, SWT.PUSH);
		button.setText(text);
		button.addListener(SWT.Selection, event -> pressed.run());
		return button;
	}

	private void customersChanged() {
		if (list.isDisposed()) {
			return;
		}
		desk.trouble().ifPresent(this::say);
		undo.refresh();
		find();
		Optional<LikeCustomers> like = desk.alike().stream().findFirst();
		alike.setText(like.map(pair -> NLS.bind(Messages.CustomersView_alike, pair.one().name(), pair.other().name()))
				.orElse("")); //$NON-NLS-1$
		// a line that says nothing is no stop for the keys
		((GridData) alike.getLayoutData()).exclude = like.isEmpty();
		alike.setVisible(like.isPresent());
		alike.getParent().layout();
	}

	private void find() {
		String[] words = NameKey.of(filter.getText()).split(" "); //$NON-NLS-1$
		List<Customer> found = new ArrayList<>();
		for (Customer customer : desk.customers()) {
			StringBuilder text = new StringBuilder();
			for (CustomerField field : CustomerField.values()) {
				text.append(NameKey.of(customer.get(field))).append('\n');
			}
			if (List.of(words).stream().allMatch(text.toString()::contains)) {
				found.add(customer);
			}
		}
		listed = found;
		list.setRedraw(false);
		list.removeAll();
		found.forEach(customer -> new TableItem(list, SWT.NONE).setText(customer.name()));
		list.setRedraw(true);
		show(found);
	}

	/** Whom to show of those that are listed: the wanted one, else the first. */
	private void show(List<Customer> found) {
		int index = -1;
		for (int i = 0; i < found.size(); i++) {
			index = found.get(i).id().equals(wanted) ? i : index;
		}
		index = index < 0 && !found.isEmpty() ? 0 : index;
		Customer next = index < 0 ? null : found.get(index);
		list.setSelection(index);
		boolean same = shown != null && next != null && shown.id().equals(next.id());
		if (same && form.isChanged()) {
			// what is being typed stays; whoever keeps it is told if somebody else was quicker
			return;
		}
		display(next);
	}

	private void chosen() {
		int index = list.getSelectionIndex();
		if (index >= 0 && leave()) {
			wanted = listed.get(index).id();
			display(listed.get(index));
		} else if (shown != null) {
			list.setSelection(listed.indexOf(shown));
		}
	}

	private void display(Customer customer) {
		shown = customer;
		wanted = customer == null ? wanted : customer.id();
		form.show(customer);
		typed();
		jobs.show(customer);
	}

	/** What is typed is kept before somebody else is looked at. @return whether it can be */
	boolean leave() {
		return actions.keep();
	}

	private void typed() {
		boolean now = form.isChanged();
		keep.setEnabled(now);
		discard.setEnabled(now);
	}

	/** Has somebody be looked at, now or as soon as the desk knows. */
	void select(String id) {
		if (!list.isDisposed()) {
			wanted = id;
			desk.find(id).ifPresent(customer -> {
				// what was typed is what is kept now
				shown = customer;
				form.show(customer);
			});
			if (desk.find(id).isPresent() && listed.stream().noneMatch(each -> each.id().equals(id))) {
				filter.setText(""); //$NON-NLS-1$
			}
			find();
		}
	}

	/** What somebody else has made of it is shown instead of what was typed. */
	void takeTheirs(Customer theirs) {
		display(theirs);
		desk.refresh();
	}

	void say(String text) {
		if (!notice.isDisposed()) {
			notice.setText(text.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
			notice.setToolTipText(text.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
			notice.getParent().layout();
			undo.refresh();
		}
	}

	CustomerActions actions() {
		return actions;
	}

	CustomerForm form() {
		return form;
	}

	/** Whom is looked at. */
	Optional<Customer> shown() {
		return Optional.ofNullable(shown);
	}

	/** The field of the form. */
	public Text field(CustomerField field) {
		return form.field(field);
	}

	/** Where the words are typed that are looked for. */
	public Text filter() {
		return filter;
	}

	/** The names that are listed. */
	public List<String> names() {
		return List.of(list.getItems()).stream().map(TableItem::getText).toList();
	}

	/** The list of names. */
	public Table list() {
		return list;
	}

	/** The jobs of whom is looked at. */
	public Table jobs() {
		return jobs.table();
	}

	/** The proposal to make one of two. */
	public Link alike() {
		return alike;
	}

	/** What is said at the foot. */
	public String notice() {
		return notice.getText();
	}

	@Override
	public void setFocus() {
		list.setFocus();
	}

	@Override
	public void dispose() {
		desk.removeListener(changed);
		super.dispose();
	}
}
