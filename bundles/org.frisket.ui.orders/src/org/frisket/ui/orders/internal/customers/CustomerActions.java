package org.frisket.ui.orders.internal.customers;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.dialogs.ElementListSelectionDialog;
import org.frisket.model.WholeFile;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.CustomerField;
import org.frisket.orders.customers.Customers;
import org.frisket.orders.customers.Erasure;
import org.frisket.studio.Studio;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.studio.StoreJob;

/** What can be done to customers. Each asks what it has to ask, and does the rest off the UI thread. */
final class CustomerActions {

	private final CustomersView view;
	private final CustomerDesk desk = CustomerDesk.get();

	CustomerActions(CustomersView view) {
		this.view = view;
	}

	private Shell shell() {
		return view.getSite().getShell();
	}

	private class After implements CustomerDesk.Outcome {

		private final Customer mine;

		/** @param mine what was to be kept; null if nobody typed anything */
		After(Customer mine) {
			this.mine = mine;
		}

		@Override
		public void done(String id) {
			view.say(""); //$NON-NLS-1$
			// whoever has gone on to somebody else is not led back
			if (mine == null || view.shown().filter(shown -> shown.id().equals(id)).isPresent()) {
				view.select(id);
			}
		}

		@Override
		public void overtaken(Customer now) {
			if (mine == null) {
				view.say(NLS.bind(Messages.CustomerActions_overtaken, now.name()));
			} else {
				choose(mine, now);
			}
		}

		@Override
		public void refused(String why) {
			view.say(why);
		}
	}

	/** A new one, to be named. */
	void create() {
		if (!view.leave()) {
			return;
		}
		String name = Messages.CustomerActions_newName;
		int number = 1;
		while (isTaken(name)) {
			name = Messages.CustomerActions_newName + ' ' + ++number;
		}
		desk.change(Messages.CustomerActions_create, CustomerStep.add(Customer.named(name)), new After(null) {

			@Override
			public void done(String id) {
				super.done(id);
				view.form().field(CustomerField.NAME).setFocus();
				view.form().field(CustomerField.NAME).selectAll();
			}
		});
	}

	private boolean isTaken(String name) {
		return desk.customers().stream().anyMatch(each -> each.name().equalsIgnoreCase(name));
	}

	/** Keeps what is typed, in a while. @return whether it can be kept */
	boolean keep() {
		if (view.form().isChanged()) {
			try {
				keep(view.shown().orElseThrow(), view.form().typed());
			} catch (IllegalArgumentException wrong) {
				view.say(wrong.getMessage());
				return false;
			}
		}
		return true;
	}

	private void keep(Customer before, Customer typed) {
		desk.change(NLS.bind(Messages.CustomerActions_change, typed.name()), CustomerStep.change(before, typed),
				new After(typed));
	}

	/** Somebody else was quicker: both are shown, and nothing is written over unseen. */
	private void choose(Customer mine, Customer theirs) {
		String both = Stream.of(CustomerField.values()).filter(field -> !mine.get(field).equals(theirs.get(field)))
				.map(field -> NLS.bind(Messages.CustomerActions_differs,
						new Object[] { CustomerForm.label(field), mine.get(field), theirs.get(field) }))
				.collect(Collectors.joining("\n")); //$NON-NLS-1$
		int answer = MessageDialog.open(MessageDialog.QUESTION, shell(), Messages.CustomerActions_both,
				NLS.bind(Messages.CustomerActions_bothMessage, theirs.name(), both), SWT.NONE,
				Messages.CustomerActions_mine,
				Messages.CustomerActions_theirs);
		if (answer == 0) {
			keep(theirs, mine);
		} else {
			view.takeTheirs(theirs);
		}
	}

	/** Chooses another one that this one is, those that look alike first, and makes one of them. */
	void merge() {
		Customer from = view.shown().orElse(null);
		if (from == null) {
			return;
		}
		ElementListSelectionDialog dialog = new ElementListSelectionDialog(shell(), new LabelProvider() {
			@Override
			public String getText(Object element) {
				return ((Customer) element).name();
			}
		});
		dialog.setTitle(Messages.CustomerActions_merge);
		dialog.setMessage(NLS.bind(Messages.CustomerActions_into, from.name()));
		dialog.setHelpAvailable(false);
		dialog.setElements(desk.customers().stream().filter(each -> !each.id().equals(from.id())).toArray());
		likeliest(from).ifPresent(like -> dialog.setInitialSelections(like));
		if (dialog.open() == Window.OK && dialog.getFirstResult() instanceof Customer into) {
			merge(from, into);
		}
	}

	private Optional<Customer> likeliest(Customer customer) {
		return desk.alike().stream().filter(pair -> pair.one().id().equals(customer.id())
				|| pair.other().id().equals(customer.id()))
				.map(pair -> pair.one().id().equals(customer.id()) ? pair.other() : pair.one()).findFirst();
	}

	/** Makes one of the two that look most alike; the one of whom more is known stays. */
	void mergeLikeliest() {
		desk.alike().stream().findFirst().ifPresent(pair -> {
			boolean first = known(pair.one()) >= known(pair.other());
			merge(first ? pair.other() : pair.one(), first ? pair.one() : pair.other());
		});
	}

	/** In characters, as a guess: whoever merges is shown what is let go. */
	private static int known(Customer customer) {
		return Stream.of(CustomerField.values()).mapToInt(field -> customer.get(field).strip().length()).sum();
	}

	/** Shows what it comes to, and asks for the name. */
	void merge(Customer from, Customer into) {
		if (!view.leave()) {
			return;
		}
		Customer joined = Customers.preview(from, into);
		List<String> lines = new ArrayList<>();
		lines.add(NLS.bind(Messages.CustomerActions_mergeJobs, from.name(), into.name()));
		for (CustomerField field : CustomerField.values()) {
			if (!joined.get(field).equals(into.get(field))) {
				lines.add(NLS.bind(Messages.CustomerActions_mergeField, CustomerForm.label(field), joined.get(field)));
			} else if (field != CustomerField.NAME && !from.get(field).isBlank()
					&& !from.get(field).equals(into.get(field))
					&& !into.get(field).contains(from.get(field))) {
				lines.add(NLS.bind(Messages.CustomerActions_mergeLost, CustomerForm.label(field), from.get(field)));
			}
		}
		lines.add(Messages.CustomerActions_mergeUndo);
		new NameDialog(shell(), Messages.CustomerActions_merge,
				NLS.bind(Messages.CustomerActions_mergeMessage, into.name()),
				lines, from.name(), Messages.CustomerActions_mergeButton,
				() -> desk.change(NLS.bind(Messages.CustomerActions_mergeStep, from.name()),
				CustomerStep.merge(from, into),
						new After(null))).open();
	}

	/** Asks for a file, and writes all that is kept of the customer. */
	void askForExport() {
		view.shown().ifPresent(customer -> {
			FileDialog dialog = new FileDialog(shell(), SWT.SAVE);
			dialog.setFileName("customer.json"); //$NON-NLS-1$
			dialog.setFilterExtensions(new String[] { "*.json" }); //$NON-NLS-1$
			dialog.setOverwrite(true);
			String chosen = dialog.open();
			if (chosen != null) {
				export(customer, Path.of(chosen));
			}
		});
	}

	void export(Customer customer, Path file) {
		new StoreJob<>(Messages.CustomerActions_export, () -> {
			byte[] json = new Customers(Studio.folder()).export(customer).getBytes(StandardCharsets.UTF_8);
			try {
				WholeFile.write(out -> out.write(json), file);
			} catch (IOException e) {
				throw new IOException(NLS.bind(Messages.CustomerActions_notWritten, file, WholeFile.reason(e)), e);
			}
			return file;
		}, written -> view.say(NLS.bind(Messages.CustomerActions_exported, written)), view::say).schedule();
	}

	/** Says what is forgotten and what stays, and asks for the name. */
	void erase() {
		view.shown().ifPresent(customer -> new NameDialog(shell(), Messages.CustomerActions_erase,
				NLS.bind(Messages.CustomerActions_eraseMessage, customer.name()),
				List.of(Messages.CustomerActions_eraseGone, Messages.CustomerActions_eraseStays,
				Messages.CustomerActions_eraseBackups, Messages.CustomerActions_eraseType,
						Messages.CustomerActions_eraseNoUndo),
				customer.name(), Messages.CustomerActions_eraseButton, () -> erase(customer)).open());
	}

	private void erase(Customer customer) {
		OrderDesk.get().change(Messages.CustomerActions_erase,
				() -> new Customers(Studio.folder()).erase(customer, OrderDesk.person()), this::erased, view::say);
	}

	private void erased(Erasure erasure) {
		desk.forgetSteps();
		desk.refresh();
		view.say(erasure.stillNamed().isEmpty()
				? NLS.bind(Messages.CustomerActions_erased, erasure.customer().name(), erasure.jobs().size())
				: NLS.bind(Messages.CustomerActions_erasedBut, erasure.stillNamed().stream().map(String::valueOf)
						.collect(Collectors.joining(", ")))); //$NON-NLS-1$
	}
}
