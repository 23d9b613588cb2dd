package org.frisket.ui.bench.internal.imports;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.frisket.geometry.options.Option;
import org.frisket.imports.Importer;
import org.frisket.imports.Importers;
import org.frisket.imports.job.ArtRules;
import org.frisket.prepare.extension.Contribution;
import org.frisket.ui.bench.internal.options.OptionForm;
import org.frisket.ui.bench.internal.options.OptionMemory;

/**
 * Asks how files are to be taken in. They are read meanwhile, and again with every change, so that what comes of it is
 * seen before it is accepted: sizes, contours, remarks, and what is wrong.
 */
public final class ImportDialog extends TitleAreaDialog {

	private static final int MARGIN_PX = 12;
	private static final int SPACING_PX = 8;
	private static final int FORM_PX = 500;
	private static final int PREVIEW_PX = 260;
	private static final int LIST_PX = 88;
	/** A number that is typed is not read digit by digit. */
	private static final int PAUSE_MS = 250;

	private final List<Path> files;
	private final BiConsumer<List<ReadArt>, Map<String, String>> accepted;
	private final OptionMemory memory = ImportMemory.options();
	private final Map<String, OptionForm> forms = new LinkedHashMap<>();
	private OptionForm rules;
	private UnitQuestion units;
	private ArtPreview preview;
	private org.eclipse.swt.widgets.List remarks;
	private ReadJob reading;
	private List<ReadArt> read = List.of();
	private List<Option> asked = List.of();
	private final Runnable later = this::read;

	/** @param accepted called when the dialog is closed with what was read and the texts of the rules */
	ImportDialog(Shell parent, List<Path> files, BiConsumer<List<ReadArt>, Map<String, String>> accepted) {
		super(parent);
		this.files = List.copyOf(files);
		this.accepted = accepted;
		setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.RESIZE | SWT.PRIMARY_MODAL);
		setBlockOnOpen(false);
		setHelpAvailable(false);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.ImportDialog_title);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(MARGIN_PX, MARGIN_PX).spacing(2 * SPACING_PX, SPACING_PX)
				.applyTo(area);
		Composite form = new Composite(area, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(SPACING_PX, SPACING_PX).applyTo(form);
		GridDataFactory.fillDefaults().grab(true, true).hint(FORM_PX, SWT.DEFAULT).applyTo(form);
		files.forEach(file -> Importers.forFile(file.toString()).ifPresent(importer -> addForm(form, importer)));
		rules = new OptionForm(form, memory, this::changed);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(rules);
		units = new UnitQuestion(form, this::changed);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(units);
		preview = new ArtPreview(area);
		GridDataFactory.fillDefaults().grab(true, true).hint(PREVIEW_PX, PREVIEW_PX).applyTo(preview);
		remarks = new org.eclipse.swt.widgets.List(area, SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, true).hint(SWT.DEFAULT, LIST_PX).applyTo(remarks);
		return area;
	}

	private void addForm(Composite area, Contribution<Importer> importer) {
		if (forms.containsKey(importer.id())) {
			return;
		}
		if (files.size() > 1) {
			new Label(area, SWT.NONE).setText(Importers.name(importer));
		}
		OptionForm form = new OptionForm(area, memory, this::changed);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(form);
		form.show(importer.id(), () -> {
			Importer loaded = importer.create();
			try {
				return loaded.options();
			} catch (RuntimeException | LinkageError e) {
				throw importer.failed(e);
			}
		});
		forms.put(importer.id(), form);
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.ImportDialog_import, true);
		createButton(parent, IDialogConstants.CANCEL_ID, Messages.ImportDialog_cancel, false);
	}

	@Override
	protected Control createContents(Composite parent) {
		Control contents = super.createContents(parent);
		setTitle(NLS.bind(Messages.ImportDialog_heading, ImportWords.of(files)));
		read();
		return contents;
	}

	private void changed() {
		if (preview == null) {
			return;
		}
		boolean valid = rules.validate();
		for (OptionForm form : forms.values()) {
			valid &= form.validate();
		}
		getShell().layout(true, true);
		stop();
		enable(false);
		if (valid) {
			getShell().getDisplay().timerExec(PAUSE_MS, later);
		}
	}

	private void stop() {
		getShell().getDisplay().timerExec(-1, later);
		if (reading != null) {
			reading.cancel();
		}
	}

	private void read() {
		enable(false);
		setErrorMessage(null);
		setMessage(Messages.ImportDialog_reading, IMessageProvider.NONE);
		Map<Path, Map<String, String>> texts = new LinkedHashMap<>();
		files.forEach(file -> texts.put(file, texts(file)));
		ReadJob[] own = new ReadJob[1];
		own[0] = new ReadJob(files, texts::get, getShell().getDisplay(), found -> {
			if (own[0] == reading && !getShell().isDisposed()) {
				show(found);
			}
		});
		reading = own[0];
		reading.schedule();
	}

	private Map<String, String> texts(Path file) {
		Map<String, String> texts = new LinkedHashMap<>(Importers.forFile(file.toString())
				.map(importer -> forms.get(importer.id()).values()).orElse(Map.of()));
		texts.putAll(units.answer(file));
		return texts;
	}

	private void show(List<ReadArt> found) {
		read = found;
		found.forEach(units::ask);
		List<ReadArt> whole = found.stream().filter(ReadArt::isRead).toList();
		preview.show(whole);
		ask(ArtRules.options(whole.stream().map(ReadArt::art).toList()));
		remarks.removeAll();
		for (ReadArt art : found) {
			String name = art.file().getFileName().toString();
			remarks.add(art.isRead() ? NLS.bind(Messages.ImportDialog_file, new Object[] { name,
					ImportWords.size(art.art().bounds()), art.art().layers().size() }) : art.trouble());
			if (art.isRead()) {
				art.art().remarks().forEach(remark -> remarks.add(NLS.bind(Messages.ImportDialog_remark, name, remark)));
			}
		}
		judge();
		if (getShell().computeSize(SWT.DEFAULT, SWT.DEFAULT).y > getShell().getSize().y) {
			getShell().pack();
		}
		getShell().layout(true, true);
	}

	/** What matters for what was read, and nothing else; answers that were given stay. */
	private void ask(List<Option> options) {
		if (!options.equals(asked)) {
			asked = options;
			rules.show(ImportMemory.RULES, () -> options, rules.values());
		}
	}

	private void judge() {
		ReadArt broken = read.stream().filter(art -> !art.isRead()).findFirst().orElse(null);
		setErrorMessage(broken != null ? broken.trouble() : units.isWaiting() ? Messages.ImportDialog_unit : null);
		setMessage(Messages.ImportDialog_message, IMessageProvider.NONE);
		enable(broken == null && !units.isWaiting());
	}

	private void enable(boolean enabled) {
		Button ok = getButton(IDialogConstants.OK_ID);
		if (ok != null && !ok.isDisposed()) {
			ok.setEnabled(enabled);
			if (enabled && units.isVisible() && units.getChildren().length == 0) {
				ok.setFocus();
			}
		}
	}

	@Override
	protected void okPressed() {
		forms.forEach((id, form) -> memory.keep(id, form.values()));
		memory.keep(ImportMemory.RULES, rules.values());
		Map<String, String> texts = rules.values();
		List<ReadArt> all = read;
		super.okPressed();
		accepted.accept(all, texts);
	}

	@Override
	public boolean close() {
		if (getShell() != null && !getShell().isDisposed()) {
			stop();
		}
		return super.close();
	}
}
