package org.frisket.ui.print.internal.output;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.frisket.export.names.NamePattern;

/** The folder for the files, the pattern they are named by, and what that comes to. */
final class PlaceRows {

	private static final int PLACE_PX = 260;
	/** Of the names that are shown. */
	private static final int SHOWN = 3;

	private final Text folder;
	private final Text names;
	private final Label told;

	/** @param parent of three columns */
	PlaceRows(Composite parent, Path first, Runnable changed) {
		new Label(parent, SWT.NONE).setText(Messages.PlaceRows_folder);
		folder = new Text(parent, SWT.BORDER);
		folder.setData("folder"); //$NON-NLS-1$
		folder.setText(first.toString());
		folder.addListener(SWT.Modify, event -> changed.run());
		GridDataFactory.fillDefaults().grab(true, false).hint(PLACE_PX, SWT.DEFAULT).applyTo(folder);
		Button browse = new Button(parent, SWT.PUSH);
		browse.setText(Messages.PlaceRows_browse);
		browse.addListener(SWT.Selection, event -> browse());
		new Label(parent, SWT.NONE).setText(Messages.PlaceRows_names);
		names = new Text(parent, SWT.BORDER);
		names.setData("names"); //$NON-NLS-1$
		names.setText(NamePattern.USUAL);
		names.addListener(SWT.Modify, event -> changed.run());
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(names);
		new Label(parent, SWT.NONE);
		told = new Label(parent, SWT.NONE);
		told.setData("files"); //$NON-NLS-1$
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(PLACE_PX, SWT.DEFAULT).applyTo(told);
	}

	private void browse() {
		DirectoryDialog dialog = new DirectoryDialog(folder.getShell());
		dialog.setFilterPath(folder.getText());
		String chosen = dialog.open();
		if (chosen != null) {
			folder.setText(chosen);
		}
	}

	/** As they were chosen last; a folder that is no more is not. */
	void use(String lastFolder, String pattern) {
		names.setText(pattern);
		try {
			if (!lastFolder.isEmpty() && Files.isDirectory(Path.of(lastFolder))) {
				folder.setText(lastFolder);
			}
		} catch (InvalidPathException e) {
			// was one on another computer
		}
	}

	/** @throws IllegalArgumentException if it is none; the message says why */
	Path folder() {
		try {
			Path path = Path.of(folder.getText().strip());
			if (path.isAbsolute() && Files.isDirectory(path)) {
				return path;
			}
		} catch (InvalidPathException e) {
			// told as any other text that is no folder
		}
		throw new IllegalArgumentException(NLS.bind(Messages.PlaceRows_noFolder, folder.getText().strip()));
	}

	/** @throws IllegalArgumentException if it is none; the message says where and why */
	NamePattern names() {
		return NamePattern.parse(names.getText());
	}

	/** As it is written there, whether or not it does. */
	String folderText() {
		return folder.getText().strip();
	}

	/** As it is written there, whether or not it does. */
	String namesText() {
		return names.getText();
	}

	/** Shows what names come to. */
	void tell(List<Path> targets) {
		String text = targets.stream().limit(SHOWN).map(path -> path.getFileName().toString())
				.collect(Collectors.joining("\n")); //$NON-NLS-1$
		told.setText(targets.size() > SHOWN ? text + '\n' + NLS.bind(Messages.PlaceRows_more, targets.size() - SHOWN) : text);
		told.requestLayout();
	}
}
