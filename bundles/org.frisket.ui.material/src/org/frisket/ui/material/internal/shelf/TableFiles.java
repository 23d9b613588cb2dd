package org.frisket.ui.material.internal.shelf;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.frisket.material.ShelvedStock;
import org.frisket.material.Stock;
import org.frisket.material.StockShelf;
import org.frisket.material.csv.StockCsv;
import org.frisket.model.WholeFile;
import org.frisket.studio.Studio;
import org.frisket.studio.store.Store;
import org.frisket.ui.studio.StoreJob;

/** Tables of stock as files. */
final class TableFiles {

	private static final long LARGEST = 256L << 20;

	private TableFiles() {
	}

	static Optional<Path> toRead(Shell window) {
		FileDialog dialog = new FileDialog(window, SWT.OPEN);
		dialog.setText(Messages.TableFiles_import);
		dialog.setFilterNames(new String[] { Messages.TableFiles_tables, Messages.TableFiles_all });
		dialog.setFilterExtensions(new String[] { "*.csv;*.tsv;*.txt", "*" }); //$NON-NLS-1$ //$NON-NLS-2$
		return Optional.ofNullable(dialog.open()).map(Path::of);
	}

	static Optional<Path> toWrite(Shell window) {
		FileDialog dialog = new FileDialog(window, SWT.SAVE);
		dialog.setText(Messages.TableFiles_export);
		dialog.setFilterNames(new String[] { Messages.TableFiles_tables });
		dialog.setFilterExtensions(new String[] { "*.csv" }); //$NON-NLS-1$
		dialog.setFileName("stock.csv"); //$NON-NLS-1$
		dialog.setOverwrite(true);
		return Optional.ofNullable(dialog.open()).map(Path::of);
	}

	/** @throws IOException with a message that names the file */
	static byte[] read(Path file) throws IOException {
		try {
			if (Files.size(file) > LARGEST) {
				throw new IOException(NLS.bind(Messages.TableFiles_large, file, LARGEST >> 20));
			}
			return Files.readAllBytes(file);
		} catch (FileSystemException e) {
			throw new IOException(NLS.bind(Messages.TableFiles_trouble, file, WholeFile.reason(e)), e);
		}
	}

	/** Writes all that is on the shelf, wholly or not at all. @param after told why not; empty if it was written */
	static void write(Path file, Consumer<Optional<String>> after) {
		new StoreJob<>(Messages.TableFiles_export, () -> {
			List<Stock> stocks;
			try (Store store = Store.openForReading(Studio.folder(), StockShelf.AREA)) {
				stocks = new StockShelf(store).list().stream().map(ShelvedStock::stock).toList();
			}
			try {
				StockCsv.write(stocks, file);
			} catch (IOException e) {
				throw new IOException(NLS.bind(Messages.TableFiles_trouble, file, WholeFile.reason(e)), e);
			}
			return stocks.size();
		}, count -> after.accept(Optional.empty()), trouble -> after.accept(Optional.of(trouble))).schedule();
	}
}
