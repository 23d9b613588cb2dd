package org.frisket.ui.bench.internal.export;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.frisket.export.drive.Drive;
import org.frisket.export.names.NamePattern;
import org.frisket.export.plan.Destination;

/** Where files go: one file, or a folder or a drive with names by a pattern, and what these come to. */
final class PlacePart {

	private static final int PLACE_PX = 360;
	private static final int FILE = 0;
	private static final int FOLDER = 1;
	private static final int FIRST_DRIVE = 2;
	/** Of the names that are shown. */
	private static final int SHOWN = 3;

	private final Runnable changed;
	private final Combo kind;
	private final Text place;
	private final List<Control> namesRow;
	private final Text names;
	private final Label preview;
	private final List<Drive> drives = new ArrayList<>();
	/** What is in the field for the other kind. */
	private String file;
	private String folder;

	/**
	 * @param parent  of three columns
	 * @param browsed called for the name of a file to write, when somebody wants to look for it
	 */
	PlacePart(Composite parent, boolean several, Path file, String pattern, Runnable browsed, Runnable changed) {
		this.changed = changed;
		this.file = file.toString();
		folder = String.valueOf(file.getParent());
		kind = new Combo(parent, SWT.READ_ONLY);
		kind.setData("to"); //$NON-NLS-1$
		kind.setItems(Messages.PlacePart_file, Messages.PlacePart_folder);
		kind.select(several ? FOLDER : FILE);
		kind.addListener(SWT.Selection, event -> kindChosen());
		place = new Text(parent, SWT.BORDER);
		place.setData("place"); //$NON-NLS-1$
		place.setText(several ? folder : this.file);
		place.addListener(SWT.Modify, event -> placeChanged());
		GridDataFactory.fillDefaults().grab(true, false).hint(PLACE_PX, SWT.DEFAULT).applyTo(place);
		Button browse = new Button(parent, SWT.PUSH);
		browse.setText(Messages.ExportDialog_browse);
		browse.addListener(SWT.Selection, event -> browsed.run());
		Label label = new Label(parent, SWT.NONE);
		label.setText(Messages.PlacePart_names);
		names = new Text(parent, SWT.BORDER);
		names.setData("names"); //$NON-NLS-1$
		names.setText(pattern);
		names.addListener(SWT.Modify, event -> changed.run());
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(names);
		Label under = new Label(parent, SWT.NONE);
		preview = new Label(parent, SWT.WRAP);
		preview.setData("preview"); //$NON-NLS-1$
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(preview);
		namesRow = List.of(label, names, under, preview);
		showNames();
	}

	private boolean isFile() {
		return kind.getSelectionIndex() == FILE;
	}

	private void kindChosen() {
		int chosen = kind.getSelectionIndex();
		if (chosen >= FIRST_DRIVE) {
			folder = drives.get(chosen - FIRST_DRIVE).folder().toString();
		}
		place.setText(chosen == FILE ? file : folder);
		showNames();
		changed.run();
	}

	private void placeChanged() {
		if (isFile()) {
			file = place.getText();
		} else {
			folder = place.getText();
		}
		changed.run();
	}

	private void showNames() {
		for (Control control : namesRow) {
			control.setVisible(!isFile());
			((GridData) (control.getLayoutData() == null ? layout(control) : control.getLayoutData())).exclude = isFile();
		}
	}

	private static Object layout(Control control) {
		GridDataFactory.swtDefaults().applyTo(control);
		return control.getLayoutData();
	}

	/** Drives that have been found meanwhile. */
	void offer(List<Drive> found) {
		drives.addAll(found);
		found.forEach(drive -> kind.add(NLS.bind(Messages.PlacePart_drive, drive.name())));
		kind.requestLayout();
	}

	/** Another folder and other names, as a preset has them; what is empty stays. */
	void use(String newFolder, String pattern) {
		if (!pattern.isEmpty()) {
			names.setText(pattern);
		}
		if (!newFolder.isEmpty()) {
			folder = newFolder;
			kind.select(FOLDER);
			kindChosen();
		}
	}

	/** Makes a file's name have another ending. */
	void fileNamed(UnaryOperator<String> renamed) {
		file = renamed.apply(file);
		if (isFile()) {
			place.setText(file);
		}
	}

	/** @throws IllegalArgumentException if what is written there is no place or no pattern; the message says why */
	Destination destination() {
		Path path = path();
		if (isFile()) {
			if (Files.isDirectory(path)) {
				throw new IllegalArgumentException(NLS.bind(Messages.ExportDialog_isFolder, path));
			}
			return Destination.file(existing(path, path.getParent()));
		}
		return Destination.folder(existing(path, path), NamePattern.parse(names.getText()));
	}

	private Path path() {
		try {
			Path path = Path.of(place.getText().strip());
			if (path.isAbsolute() && (path.getFileName() != null || !isFile())) {
				return path;
			}
		} catch (InvalidPathException e) {
			// told as any other text that is no path
		}
		throw new IllegalArgumentException(isFile() ? Messages.ExportDialog_noPlace : Messages.PlacePart_noFolder);
	}

	private static Path existing(Path path, Path needed) {
		if (needed == null || !Files.isDirectory(needed)) {
			throw new IllegalArgumentException(NLS.bind(Messages.ExportDialog_noFolder, needed));
		}
		return path;
	}

	/** Shows what names come to; nothing if they come to none. */
	void preview(List<Path> targets) {
		String told = targets.stream().limit(SHOWN).map(path -> path.getFileName().toString())
				.collect(Collectors.joining("\n")); //$NON-NLS-1$
		preview.setText(targets.size() > SHOWN ? told + '\n' + NLS.bind(Messages.ExportDialog_more, targets.size() - SHOWN)
				: told);
		preview.requestLayout();
	}

	/** @param extension and what its files are called, for the dialog */
	void browse(String extension, String format) {
		String chosen = isFile() ? file(extension, format) : folder();
		if (chosen != null) {
			place.setText(chosen);
		}
	}

	private String file(String extension, String format) {
		FileDialog dialog = new FileDialog(place.getShell(), SWT.SAVE);
		dialog.setFilterExtensions(new String[] { "*" + extension }); //$NON-NLS-1$
		dialog.setFilterNames(new String[] { format });
		// whether a file may be replaced is said in the form, at once for all ways to name it
		dialog.setOverwrite(false);
		try {
			Path target = path();
			dialog.setFilterPath(String.valueOf(target.getParent()));
			dialog.setFileName(String.valueOf(target.getFileName()));
		} catch (IllegalArgumentException e) {
			// then from where it begins by itself
		}
		return dialog.open();
	}

	private String folder() {
		DirectoryDialog dialog = new DirectoryDialog(place.getShell());
		dialog.setFilterPath(place.getText());
		return dialog.open();
	}
}
