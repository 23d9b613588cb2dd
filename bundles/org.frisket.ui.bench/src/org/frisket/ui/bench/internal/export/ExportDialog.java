package org.frisket.ui.bench.internal.export;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.prepare.Finding;
import org.frisket.prepare.extension.Contribution;
import org.frisket.ui.bench.internal.options.OptionForm;

/**
 * Asks for format, options and place of an export, all at once and filled in, so that one key is enough for what was
 * done before. What stands in the way is said here: findings that block, a file that would be replaced, a wrong value.
 */
public final class ExportDialog extends TitleAreaDialog {

	private static final int MARGIN_PX = 12;
	private static final int SPACING_PX = 8;
	private static final int PLACE_PX = 360;
	/** What a job is most often exported for. */
	private static final String USUAL_ENDING = "svg"; //$NON-NLS-1$

	private final List<Contribution<Exporter>> formats = Exporters.all();
	private final ExportMemory memory = new ExportMemory();
	private final Path suggested;
	private final Supplier<List<Finding>> findings;
	private final Consumer<ExportRequest> accepted;
	private Combo format;
	private Text place;
	private OptionForm options;

	/**
	 * @param suggested where to write unless the user says otherwise, without an ending
	 * @param findings  what makeready says by now
	 * @param accepted  called when the dialog is closed with what to do
	 */
	public ExportDialog(Shell parent, Path suggested, Supplier<List<Finding>> findings,
			Consumer<ExportRequest> accepted) {
		super(parent);
		this.suggested = suggested;
		this.findings = findings;
		this.accepted = accepted;
		setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.RESIZE | SWT.PRIMARY_MODAL);
		setBlockOnOpen(false);
		setHelpAvailable(false);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.ExportDialog_title);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		GridLayoutFactory.fillDefaults().numColumns(3).margins(MARGIN_PX, MARGIN_PX).spacing(SPACING_PX, SPACING_PX)
				.applyTo(area);
		createFormat(area);
		createPlace(area);
		options = new OptionForm(area, memory.options(), this::validate);
		GridDataFactory.fillDefaults().span(3, 1).grab(true, true).applyTo(options);
		if (!formats.isEmpty()) {
			showOptions();
		}
		return area;
	}

	private void createFormat(Composite area) {
		new Label(area, SWT.NONE).setText(Messages.ExportDialog_format);
		format = new Combo(area, SWT.READ_ONLY);
		formats.forEach(each -> format.add(Exporters.name(each)));
		format.select(first());
		format.addListener(SWT.Selection, event -> formatChosen());
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(format);
	}

	private int first() {
		String last = memory.format().orElse(null);
		int usual = 0;
		for (int i = 0; i < formats.size(); i++) {
			if (formats.get(i).id().equals(last)) {
				return i;
			}
			if (Exporters.ending(formats.get(i)).equals(USUAL_ENDING)) {
				usual = i;
			}
		}
		return usual;
	}

	private Contribution<Exporter> chosen() {
		return formats.get(format.getSelectionIndex());
	}

	private void createPlace(Composite area) {
		new Label(area, SWT.NONE).setText(Messages.ExportDialog_place);
		place = new Text(area, SWT.BORDER);
		place.setData("place"); //$NON-NLS-1$
		Path folder = memory.folder().orElse(suggested.getParent());
		place.setText(formats.isEmpty() ? "" : folder.resolve(suggested.getFileName()) + dotEnding()); //$NON-NLS-1$
		place.addListener(SWT.Modify, event -> validate());
		GridDataFactory.fillDefaults().grab(true, false).hint(PLACE_PX, SWT.DEFAULT).applyTo(place);
		Button browse = new Button(area, SWT.PUSH);
		browse.setText(Messages.ExportDialog_browse);
		browse.addListener(SWT.Selection, event -> browse());
	}

	/** Loads the exporter. */
	private void showOptions() {
		Contribution<Exporter> chosen = chosen();
		options.show(chosen.id(), () -> {
			Exporter exporter = chosen.create();
			try {
				return exporter.options();
			} catch (RuntimeException | LinkageError e) {
				throw chosen.failed(e);
			}
		});
	}

	private String dotEnding() {
		return "." + Exporters.ending(chosen()); //$NON-NLS-1$
	}

	private void formatChosen() {
		showOptions();
		place.setText(withEnding(place.getText()));
		getShell().layout(true, true);
		validate();
		getShell().pack();
	}

	/** In place of the ending of another format, or else after what there is. */
	private String withEnding(String path) {
		for (Contribution<Exporter> each : formats) {
			String ending = "." + Exporters.ending(each); //$NON-NLS-1$
			if (path.toLowerCase(Locale.ROOT).endsWith(ending)) {
				return path.substring(0, path.length() - ending.length()) + dotEnding();
			}
		}
		return path + dotEnding();
	}

	private void browse() {
		FileDialog dialog = new FileDialog(getShell(), SWT.SAVE);
		dialog.setFilterExtensions(new String[] { "*" + dotEnding() }); //$NON-NLS-1$
		dialog.setFilterNames(new String[] { Exporters.name(chosen()) });
		// whether a file may be replaced is said in the form, at once for all ways to name it
		dialog.setOverwrite(false);
		Path target = target();
		if (target != null && target.getParent() != null) {
			dialog.setFilterPath(target.getParent().toString());
			dialog.setFileName(target.getFileName().toString());
		}
		String chosen = dialog.open();
		if (chosen != null) {
			place.setText(chosen);
		}
	}

	/** Null if the text names no file. */
	private Path target() {
		try {
			Path path = Path.of(place.getText().strip());
			return path.isAbsolute() && path.getFileName() != null ? path : null;
		} catch (InvalidPathException e) {
			return null;
		}
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.ExportDialog_export, true);
		createButton(parent, IDialogConstants.CANCEL_ID, Messages.ExportDialog_cancel, false);
	}

	@Override
	protected Control createContents(Composite parent) {
		Control contents = super.createContents(parent);
		setTitle(Messages.ExportDialog_heading);
		validate();
		return contents;
	}

	/** Findings have come in, or the form was changed. */
	public void validate() {
		Button export = getButton(IDialogConstants.OK_ID);
		if (export == null || export.isDisposed()) {
			return;
		}
		boolean valid = !formats.isEmpty() && options.validate();
		String wrong = wrongPlace();
		setErrorMessage(wrong);
		export.setEnabled(valid && wrong == null);
		long blocking = blocking();
		Path target = target();
		boolean replaces = target != null && Files.exists(target);
		setMessage(message(blocking, replaces),
				blocking > 0 || replaces ? IMessageProvider.WARNING : IMessageProvider.NONE);
		export.setText(blocking > 0 ? Messages.ExportDialog_exportAnyway
				: replaces ? Messages.ExportDialog_replace : Messages.ExportDialog_export);
		options.requestLayout();
		setButtonLayoutData(export);
		export.requestLayout();
	}

	private long blocking() {
		return findings.get().stream().filter(Finding::isBlocking).count();
	}

	private String message(long blocking, boolean replaces) {
		String replacing = replaces ? Messages.ExportDialog_willReplace : ""; //$NON-NLS-1$
		if (blocking == 0) {
			return replaces ? replacing : Messages.ExportDialog_message;
		}
		Finding first = findings.get().stream().filter(Finding::isBlocking).findFirst().orElseThrow();
		String told = blocking == 1 ? NLS.bind(Messages.ExportDialog_oneBlocking, first.message())
				: NLS.bind(Messages.ExportDialog_blocking, blocking, first.message());
		return replaces ? told + '\n' + replacing : told;
	}

	/** Null if nothing is wrong with it. */
	private String wrongPlace() {
		if (formats.isEmpty()) {
			return Messages.ExportDialog_noFormats;
		}
		Path target = target();
		if (target == null) {
			return Messages.ExportDialog_noPlace;
		}
		if (Files.isDirectory(target)) {
			return NLS.bind(Messages.ExportDialog_isFolder, target);
		}
		return Files.isDirectory(target.getParent()) ? null
				: NLS.bind(Messages.ExportDialog_noFolder, target.getParent());
	}

	@Override
	protected void okPressed() {
		ExportRequest request = new ExportRequest(chosen(), options.values(), target(), blocking() > 0);
		memory.keep(request);
		super.okPressed();
		accepted.accept(request);
	}
}
