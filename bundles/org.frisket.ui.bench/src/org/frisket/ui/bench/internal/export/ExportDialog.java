package org.frisket.ui.bench.internal.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.export.drive.Drive;
import org.frisket.export.drive.Drives;
import org.frisket.export.plan.Destination;
import org.frisket.export.plan.HandoffRequest;
import org.frisket.export.preset.Preset;
import org.frisket.export.preset.Presets;
import org.frisket.material.desk.DeskState;
import org.frisket.material.desk.SettingsDesk;
import org.frisket.model.Job;
import org.frisket.prepare.Finding;
import org.frisket.prepare.extension.Contribution;
import org.frisket.studio.Studio;
import org.frisket.ui.bench.ExportStart;
import org.frisket.ui.bench.internal.options.OptionForm;

/**
 * Asks for format, options and place of an export, all at once and filled in, so that one key is enough for what was
 * done before. What stands in the way is said here: findings that block, a file that would be replaced, a wrong value.
 */
public final class ExportDialog extends TitleAreaDialog {

	private static final int MARGIN_PX = 12;
	private static final int SPACING_PX = 8;

	private final Formats formats = new Formats(Exporters.all());
	private final ExportMemory memory = new ExportMemory();
	private final Job job;
	private final Path suggested;
	private final ExportStart start;
	private final Supplier<List<Finding>> findings;
	private final Consumer<ExportRequest> accepted;
	private Combo format;
	private WhatPart what;
	private PlacePart place;
	private PresetPart presets;
	private MachinePart machine;
	private OptionForm options;

	/**
	 * @param job       that is exported
	 * @param suggested where to write unless the user says otherwise, without an ending
	 * @param start     what is chosen already
	 * @param findings  what makeready says by now
	 * @param accepted  called when the dialog is closed with what to do
	 */
	public ExportDialog(Shell parent, Job job, Path suggested, ExportStart start, Supplier<List<Finding>> findings,
			Consumer<ExportRequest> accepted) {
		super(parent);
		this.job = job;
		this.suggested = suggested;
		this.start = start;
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
		presets = new PresetPart(area, this::use, this::preset, () -> Exporters.name(chosen()));
		what = new WhatPart(area, job.getSheets().size(), start.sheet(), this::validate);
		createFormat(area);
		machine = new MachinePart(area, start.machine(), start.run(), this::validate);
		Path folder = memory.folder().orElse(suggested.getParent());
		place = new PlacePart(area, job.getSheets().size() > 1 && start.sheet() < 0,
				Path.of(folder.resolve(suggested.getFileName()) + (formats.all().isEmpty() ? "" : dotEnding())), memory.names(), //$NON-NLS-1$
				() -> place.browse(dotEnding(), Exporters.name(chosen())), this::validate);
		options = new OptionForm(area, memory.options(), this::validate);
		GridDataFactory.fillDefaults().span(3, 1).grab(true, true).applyTo(options);
		if (!formats.all().isEmpty()) {
			showOptions();
		}
		lookRound();
		return area;
	}

	private void createFormat(Composite area) {
		new Label(area, SWT.NONE).setText(Messages.ExportDialog_format);
		format = new Combo(area, SWT.READ_ONLY);
		format.setData("format"); //$NON-NLS-1$
		formats.all().forEach(each -> format.add(Exporters.name(each)));
		format.select(formats.first(memory.format().orElse(null), start.forMachine()));
		format.addListener(SWT.Selection, event -> formatChosen());
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(format);
	}

	private Contribution<Exporter> chosen() {
		return formats.all().get(format.getSelectionIndex());
	}

	/** Presets and drives come when they are found: a folder on another computer and a drive can be slow to answer. */
	private void lookRound() {
		Display display = getShell().getDisplay();
		org.eclipse.core.runtime.jobs.Job.createSystem(Messages.ExportDialog_title, monitor -> {
			Presets found = Presets.in(Studio.folder().presets());
			Optional<DeskState> desk = desk();
			List<Drive> drives = Drives.ofThisComputer().mounted().stream().filter(Drive::writable).toList();
			display.asyncExec(() -> {
				if (getShell() != null && !getShell().isDisposed()) {
					presets.offer(found);
					place.offer(drives);
					desk.ifPresent(machine::offer);
					validate();
					if (!found.problems().isEmpty()) {
						setMessage(String.join("\n", found.problems()), IMessageProvider.WARNING); //$NON-NLS-1$
					}
				}
			});
		}).schedule();
	}

	/** None if it cannot be looked up: that is told when a file is written that needs it. */
	private static Optional<DeskState> desk() {
		try {
			return Optional.of(SettingsDesk.look(Studio.folder()));
		} catch (IOException e) {
			return Optional.empty();
		}
	}

	private void use(Preset preset) {
		int index = formats.indexOf(preset.format());
		if (index < 0) {
			setErrorMessage(NLS.bind(Messages.ExportDialog_noFormat, preset.name(), preset.format()));
			return;
		}
		format.select(index);
		showOptions();
		options.fill(preset.options());
		machine.use(preset.machine(), preset.run());
		place.fileNamed(this::withEnding);
		place.use(preset.folder(), preset.names());
		refit();
	}

	private Preset preset(String name) {
		Destination destination = place.destination();
		return new Preset(name, chosen().id(), options.values(), machine.run(), machine.machine(),
				destination.isFolder() ? destination.names().toString() : "", //$NON-NLS-1$
				destination.isFolder() ? destination.path().toString() : ""); //$NON-NLS-1$
	}

	/** Loads the exporter. */
	private void showOptions() {
		Contribution<Exporter> chosen = chosen();
		machine.show(Exporters.isForMachine(chosen));
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
		place.fileNamed(this::withEnding);
		refit();
	}

	private void refit() {
		getShell().layout(true, true);
		validate();
		getShell().pack();
	}

	private String withEnding(String path) {
		return formats.withEnding(path, dotEnding());
	}

	/** @throws IllegalArgumentException if something in the form does not do; the message says what */
	private HandoffRequest request() {
		if (formats.all().isEmpty()) {
			throw new IllegalArgumentException(Messages.ExportDialog_noFormats);
		}
		return new HandoffRequest(what.choice(), chosen(), options.values(), place.destination(), machine.run());
	}

	/** The same. A machine that is not known yet is shown as the field it is. */
	private List<Path> targets() {
		return request().targets(job, machine.machine().isEmpty() ? "{machine}" : machine.machine()); //$NON-NLS-1$
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
		boolean valid = !formats.all().isEmpty() && options.validate();
		List<Path> targets = List.of();
		String wrong = null;
		try {
			targets = targets();
		} catch (IllegalArgumentException e) {
			wrong = e.getMessage();
		}
		place.preview(targets);
		setErrorMessage(wrong);
		export.setEnabled(valid && wrong == null);
		long blocking = blocking();
		long replaced = targets.stream().filter(Files::exists).count();
		setMessage(message(blocking, replaced),
				blocking > 0 || replaced > 0 ? IMessageProvider.WARNING : IMessageProvider.NONE);
		export.setText(blocking > 0 ? Messages.ExportDialog_exportAnyway
				: replaced > 0 ? Messages.ExportDialog_replace : Messages.ExportDialog_export);
		options.requestLayout();
		setButtonLayoutData(export);
		export.requestLayout();
	}

	private long blocking() {
		return findings.get().stream().filter(Finding::isBlocking).count();
	}

	private String message(long blocking, long replaced) {
		String replacing = replaced == 1 ? Messages.ExportDialog_willReplace
				: replaced > 1 ? NLS.bind(Messages.ExportDialog_willReplaceAll, replaced) : ""; //$NON-NLS-1$
		if (blocking == 0) {
			return replaced > 0 ? replacing : Messages.ExportDialog_message;
		}
		Finding first = findings.get().stream().filter(Finding::isBlocking).findFirst().orElseThrow();
		String told = blocking == 1 ? NLS.bind(Messages.ExportDialog_oneBlocking, first.message())
				: NLS.bind(Messages.ExportDialog_blocking, blocking, first.message());
		return replaced > 0 ? told + '\n' + replacing : told;
	}

	@Override
	protected void okPressed() {
		HandoffRequest handoff = request();
		ExportRequest request = new ExportRequest(handoff, machine.machine(), blocking() > 0);
		memory.keep(handoff);
		super.okPressed();
		accepted.accept(request);
	}
}
