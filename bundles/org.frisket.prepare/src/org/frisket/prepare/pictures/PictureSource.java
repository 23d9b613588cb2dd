package org.frisket.prepare.pictures;

import java.io.IOException;
import java.lang.ref.SoftReference;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.ImageBytes;
import org.frisket.model.JobHome;
import org.frisket.model.Jobs;
import org.frisket.model.Picture;
import org.frisket.print.picture.ArtPage;

/**
 * Where the pixels of a picture come from: the job itself, or a file that it refers to. Such a file is looked for beside that
 * of the job, and only on disks: nothing is ever fetched from elsewhere.
 *
 * @param bytes  the file's; null if there are none
 * @param page   which page of it, from 1; of another kind than PDF, a file has one
 * @param link   the file that was looked for; empty for what is kept in the job
 * @param trouble why there are no bytes; empty if there are some
 */
public record PictureSource(ImageBytes bytes, int page, String link, String trouble) {

	/** As much as an importer reads. */
	static final long LARGEST = 64L << 20;

	private static final int MEGABYTE = 1 << 20;
	private static final Map<Stamp, SoftReference<ImageBytes>> READ = Collections.synchronizedMap(new HashMap<>());

	private record Stamp(Path file, long size, FileTime changed) {
	}

	/** Reads a file that is referred to, unless it was read before and has not changed since. */
	public static PictureSource of(Picture picture) {
		if (picture.getImage() != null || picture.getLink() == null || picture.getLink().isBlank()) {
			return new PictureSource(picture.getImage(), page(picture), "", "");
		}
		Optional<Path> file = file(picture);
		if (file.isEmpty()) {
			return new PictureSource(null, page(picture), picture.getLink(), Messages.PictureSource_noFile);
		}
		try {
			return new PictureSource(bytes(file.get()), page(picture), file.get().toString(), "");
		} catch (IOException e) {
			return new PictureSource(null, page(picture), file.get().toString(), Files.exists(file.get()) ? reason(e)
					: Messages.PictureSource_missing);
		}
	}

	/** The bytes as far as they are at hand: no disk is asked, so that it may be called where nobody waits. */
	public static Optional<ImageBytes> remembered(Picture picture) {
		if (picture.getImage() != null) {
			return Optional.of(picture.getImage());
		}
		Optional<Path> file = file(picture);
		synchronized (READ) {
			return READ.entrySet().stream().filter(each -> file.isPresent() && each.getKey().file().equals(file.get()))
					.map(each -> each.getValue().get()).filter(bytes -> bytes != null).findFirst();
		}
	}

	/** Whether the pixels are not in the job, but in a file of their own. */
	public boolean isLinked() {
		return !link.isEmpty();
	}

	/** Which page of its file a picture shows, from 1: as its link says, or its media type. */
	public static int page(Picture picture) {
		int linked = picture.getImage() == null ? ArtPage.ofLink(picture.getLink()) : 1;
		return linked > 1 ? linked : ArtPage.ofMediaType(picture.getMediaType());
	}

	/** The file that a picture refers to; empty if it refers to none, or beside no job that is in a file. */
	public static Optional<Path> file(Picture picture) {
		Optional<Path> home = JobHome.of(Jobs.jobOf(picture)).map(Path::getParent);
		return path(picture).flatMap(link -> link.isAbsolute() ? Optional.of(link) : home.map(folder -> folder.resolve(link)))
				.map(Path::normalize);
	}

	/** The same as it is written in the job; empty if that is no path. */
	static Optional<Path> path(Picture picture) {
		try {
			return Optional.ofNullable(picture.getLink()).map(ArtPage::fileOf).map(Path::of);
		} catch (InvalidPathException e) {
			return Optional.empty();
		}
	}

	private static String reason(IOException e) {
		return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
	}

	private static ImageBytes bytes(Path file) throws IOException {
		long size = Files.size(file);
		if (!Files.isRegularFile(file)) {
			throw new IOException(Messages.PictureSource_noFile);
		}
		if (size > LARGEST) {
			throw new IOException(NLS.bind(Messages.PictureSource_tooLarge, size / MEGABYTE, LARGEST / MEGABYTE));
		}
		Stamp stamp = new Stamp(file, size, Files.getLastModifiedTime(file));
		SoftReference<ImageBytes> kept = READ.get(stamp);
		ImageBytes known = kept == null ? null : kept.get();
		if (known == null) {
			known = ImageBytes.of(Files.readAllBytes(file));
			READ.entrySet().removeIf(each -> each.getValue().get() == null || each.getKey().file().equals(file));
			READ.put(stamp, new SoftReference<>(known));
		}
		return known;
	}
}
