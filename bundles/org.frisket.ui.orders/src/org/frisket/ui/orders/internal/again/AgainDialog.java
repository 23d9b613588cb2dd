package org.frisket.ui.orders.internal.again;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.desk.DueDay;
import org.frisket.orders.work.again.Again;
import org.frisket.orders.work.again.Note;
import org.frisket.orders.work.again.Wish;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.studio.Studio;
import org.frisket.ui.Icon;
import org.frisket.ui.orders.internal.Named;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.studio.StoreJob;

/**
 * Asks for when and how many, and shows what has changed since the job was made. What is found is worked out meanwhile.
 */
public final class AgainDialog extends TitleAreaDialog {

	private static final Point SIZE = new Point(720, 460);
	/** What the hint of the day needs. */
	private static final int FIELD_PX = 200;
	private static final Stage[] STAGES = { Stage.ORDERED, Stage.ENQUIRY };

	private final Entry original;
	private final Consumer<Entry> ordered;
	private Text due;
	private Text quantity;
	private Combo stage;
	private Table notes;
	private LocalResourceManager images;
	private boolean known;
	private boolean ordering;

	/** @param ordered told of the new job, once it is kept */
	AgainDialog(Shell parent, Entry original, Consumer<Entry> ordered) {
		super(parent);
		this.original = original;
		this.ordered = ordered;
		setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.RESIZE | SWT.APPLICATION_MODAL);
		setBlockOnOpen(false);
		setHelpAvailable(false);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.AgainDialog_title);
		images = new LocalResourceManager(JFaceResources.getResources(), shell);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		GridLayoutFactory.swtDefaults().numColumns(2).applyTo(area);
		due = field(area, Messages.AgainDialog_due, ""); //$NON-NLS-1$
		due.setMessage(Messages.AgainDialog_dueForm);
		due.setToolTipText(Messages.AgainDialog_dueForm);
		quantity = field(area, Messages.AgainDialog_quantity, Integer.toString(original.quantity()));
		label(area, Messages.AgainDialog_stage);
		stage = new Combo(area, SWT.READ_ONLY | SWT.DROP_DOWN);
		stage.setItems(Messages.AgainDialog_ordered, Messages.AgainDialog_enquiry);
		stage.select(0);
		Named.as(Messages.AgainDialog_stage, stage);
		GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(stage);
		stage.addListener(SWT.Selection, event -> check());
		Label heading = label(area, Messages.AgainDialog_notes);
		GridDataFactory.fillDefaults().span(2, 1).indent(0, 8).applyTo(heading);
		notes = new Table(area, SWT.BORDER | SWT.FULL_SELECTION);
		GridDataFactory.fillDefaults().grab(true, true).span(2, 1).hint(SWT.DEFAULT, 140).applyTo(notes);
		new TableColumn(notes, SWT.NONE);
		notes.addListener(SWT.Resize, event -> notes.getColumn(0).setWidth(
				Math.max(notes.getClientArea().width, widest())));
		notes.setToolTipText(Messages.AgainDialog_notes);
		Named.as(Messages.AgainDialog_notes, notes);
		return area;
	}

	private int widest() {
		notes.getColumn(0).pack();
		return notes.getColumn(0).getWidth();
	}

	private static Label label(Composite area, String text) {
		Label label = new Label(area, SWT.NONE);
		label.setText(text);
		return label;
	}

	private Text field(Composite area, String label, String text) {
		label(area, label);
		Text field = new Text(area, SWT.BORDER);
		field.setText(text);
		field.setData(label);
		Named.as(label, field);
		GridDataFactory.fillDefaults().hint(FIELD_PX, SWT.DEFAULT).align(SWT.BEGINNING, SWT.CENTER).applyTo(field);
		field.addListener(SWT.Modify, event -> check());
		return field;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.AgainDialog_order, true);
		createButton(parent, IDialogConstants.CANCEL_ID, Messages.AgainDialog_cancel, false);
	}

	@Override
	protected Control createContents(Composite parent) {
		Control contents = super.createContents(parent);
		setTitle(NLS.bind(Messages.AgainDialog_job, original.number(), original.title()));
		setMessage(Messages.AgainDialog_message);
		due.setFocus();
		say(Messages.AgainDialog_looking);
		study();
		return contents;
	}

	@Override
	protected Point getInitialSize() {
		Point wanted = super.getInitialSize();
		return new Point(Math.max(SIZE.x, wanted.x), Math.max(SIZE.y, wanted.y));
	}

	/** What changed is looked for with the quantity as it was; sheets of another one are told when it is ordered. */
	private void study() {
		Again again = new Again(Studio.folder(), FontLibraries.installed());
		Wish same = Wish.same();
		new StoreJob<>(Messages.AgainDialog_looking, () -> again.study(original.number(), same), this::found,
				message -> {
			if (isOpen()) {
				known = true;
				notes.removeAll();
				setErrorMessage(message);
			}
		}).schedule();
	}

	private void found(List<Note> found) {
		if (!isOpen()) {
			return;
		}
		known = true;
		notes.removeAll();
		for (Note note : found) {
			TableItem item = new TableItem(notes, SWT.NONE);
			item.setImage(images.create(icon(note).descriptor()));
			item.setText(note.sentence());
		}
		if (found.isEmpty()) {
			say(Messages.AgainDialog_nothing);
		}
		notes.getColumn(0).setWidth(Math.max(notes.getClientArea().width, widest()));
	}

	private void say(String text) {
		notes.removeAll();
		new TableItem(notes, SWT.NONE).setText(text);
	}

	private static Icon icon(Note note) {
		return switch (note.severity()) {
		case BLOCKING -> Icon.BLOCKING;
		case CAUTION -> Icon.CAUTION;
		case NOTE -> Icon.NOTE;
		};
	}

	private boolean isOpen() {
		return getShell() != null && !getShell().isDisposed();
	}

	/** What is asked for; empty, with a message, while it cannot be so. */
	private Optional<Wish> check() {
		if (getButton(IDialogConstants.OK_ID) == null) {
			return Optional.empty();
		}
		Optional<Wish> wish = Optional.empty();
		try {
			Optional<LocalDate> day = DueDay.parse(due.getText(), LocalDate.now(), Locale.getDefault());
			wish = Optional.of(new Wish(day, Optional.of(Integer.parseInt(quantity.getText().strip())),
					STAGES[stage.getSelectionIndex()]));
			setErrorMessage(null);
		} catch (NumberFormatException noNumber) {
			setErrorMessage(NLS.bind(Messages.AgainDialog_noNumber, quantity.getText()));
		} catch (IllegalArgumentException noDayOrTooFew) {
			setErrorMessage(noDayOrTooFew.getMessage());
		}
		getButton(IDialogConstants.OK_ID).setEnabled(wish.isPresent() && !ordering);
		return wish;
	}

	@Override
	protected void okPressed() {
		check().ifPresent(wish -> {
			ordering = true;
			check();
			Again again = new Again(Studio.folder(), FontLibraries.installed());
			OrderDesk.get().change(Messages.AgainDialog_title,
					() -> again.order(original.number(), wish, OrderDesk.person()), repeat -> {
				if (isOpen()) {
					super.okPressed();
				}
				ordered.accept(repeat.order());
			}, message -> {
				if (isOpen()) {
					ordering = false;
					check();
					setErrorMessage(message);
				}
			});
		});
	}

	/** Whether it has been looked for what changed. */
	public boolean isKnown() {
		return known;
	}

	/** The notes as they are read. */
	public List<String> notes() {
		return List.of(notes.getItems()).stream().map(TableItem::getText).toList();
	}
}
