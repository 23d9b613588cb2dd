package org.frisket.ui.orders.internal.customers;

import java.util.EnumMap;
import java.util.Map;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.frisket.orders.customers.Customer;
import org.frisket.orders.customers.CustomerField;
import org.frisket.ui.orders.internal.Named;

/** What is known of a customer, to be read and changed. Holds no rules: those are the customer's. */
final class CustomerForm {

	private static final int LINES_PX = 48;
	private static final int FIELD_PX = 160;

	private final Composite area;
	private final Map<CustomerField, Text> fields = new EnumMap<>(CustomerField.class);
	private Customer shown;
	private boolean filling;

	CustomerForm(Composite parent, Runnable changed, Runnable keep) {
		area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 4).applyTo(area);
		for (CustomerField field : CustomerField.values()) {
			boolean lines = field == CustomerField.ADDRESS || field == CustomerField.AGREEMENT
					|| field == CustomerField.NOTES;
			Label label = new Label(area, SWT.NONE);
			label.setText(label(field));
			GridDataFactory.fillDefaults().align(SWT.BEGINNING, lines ? SWT.BEGINNING : SWT.CENTER).applyTo(label);
			Text text = new Text(area, SWT.BORDER | (lines ? SWT.MULTI | SWT.WRAP | SWT.V_SCROLL : SWT.SINGLE));
			text.setData(field);
			Named.as(label(field), text);
			text.setTextLimit(field.longest());
			GridDataFactory.fillDefaults().grab(true, false).hint(FIELD_PX, lines ? LINES_PX : SWT.DEFAULT)
					.applyTo(text);
			text.addListener(SWT.Modify, event -> {
				if (!filling) {
					changed.run();
				}
			});
			text.addListener(SWT.Traverse, event -> traverse(event, lines, keep));
			fields.put(field, text);
		}
	}

	/** Tab leads out of fields of several lines, and Enter keeps what is in one of a single line. */
	private static void traverse(Event event, boolean lines, Runnable keep) {
		if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
			event.doit = true;
		} else if (event.detail == SWT.TRAVERSE_RETURN && !lines) {
			keep.run();
		}
	}

	static String label(CustomerField field) {
		return switch (field) {
		case NAME -> Messages.CustomerField_name;
		case CONTACT -> Messages.CustomerField_contact;
		case MAIL -> Messages.CustomerField_mail;
		case PHONE -> Messages.CustomerField_phone;
		case ADDRESS -> Messages.CustomerField_address;
		case AGREEMENT -> Messages.CustomerField_agreement;
		case NOTES -> Messages.CustomerField_notes;
		};
	}

	Composite control() {
		return area;
	}

	Text field(CustomerField field) {
		return fields.get(field);
	}

	/** @param customer null for nobody */
	void show(Customer customer) {
		shown = customer;
		filling = true;
		fields.forEach((field, text) -> {
			String now = customer == null ? "" : customer.get(field); //$NON-NLS-1$
			if (!plain(text.getText()).equals(now)) {
				text.setText(now);
			}
			text.setEnabled(customer != null);
		});
		filling = false;
	}

	/** Whether anything is otherwise than it was shown. */
	boolean isChanged() {
		return shown != null
				&& fields.entrySet().stream().anyMatch(each -> !plain(each.getValue().getText())
				.equals(shown.get(each.getKey())));
	}

	/**
	 * The customer with what is typed.
	 *
	 * @throws IllegalArgumentException if it cannot be so; the message is for people
	 */
	Customer typed() {
		Customer typed = shown;
		for (Map.Entry<CustomerField, Text> each : fields.entrySet()) {
			typed = typed.with(each.getKey(), plain(each.getValue().getText()));
		}
		return typed;
	}

	/** Line ends as they are kept. */
	private static String plain(String text) {
		return text.replace("\r\n", "\n"); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
