package org.frisket.prepare.pictures;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;
import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.JobHome;
import org.frisket.model.Jobs;
import org.frisket.model.Picture;
import org.frisket.print.picture.ArtPage;

/**
 * Pictures that a job only refers to, when it leaves the folder that they lie beside. Guests on its sheets are files beside it
 * too: they go on being found where they are, with their own pictures beside them.
 */
public final class LinkedPictures {

	/** Characters that pictures take in a job file, at most: the rest of it needs room too. */
	private static final long ROOM = JobFile.LARGEST / 4L * 3;
	/** Of base 64, in characters to bytes. */
	private static final double BASE64 = 4 / 3.0;

	private LinkedPictures() {
	}

	/**
	 * Takes all of them into the job, so that it can go anywhere. What cannot be taken in stays a link, which says then where
	 * the file was from wherever it is read, and so do guests. Reads files: it takes its time.
	 *
	 * @return what stayed a link and why, a sentence each
	 */
	public static List<String> keep(Job job) {
		List<String> left = new ArrayList<>();
		long taken = 0;
		for (Picture picture : linked(job)) {
			PictureSource source = PictureSource.of(picture);
			String trouble = source.trouble();
			if (trouble.isEmpty()) {
				long size = Math.round(source.bytes().size() * BASE64);
				trouble = taken + size > ROOM ? Messages.LinkedPictures_room : "";
				taken += trouble.isEmpty() ? size : 0;
			}
			if (trouble.isEmpty()) {
				picture.setMediaType(mediaType(source, picture));
				picture.setImage(source.bytes());
				picture.setLink(null);
			} else {
				left.add(NLS.bind(Messages.LinkedPictures_left, source.link(), trouble));
				PictureSource.file(picture).ifPresent(file -> picture.setLink(ArtPage.link(file.toString(), source.page())));
			}
		}
		JobHome.of(job).flatMap(LinkedPictures::folder).ifPresent(folder -> guests(job).forEach((guest, path) -> guest
				.setFile(folder.resolve(path).normalize().toString())));
		return left;
	}

	/** What cannot be read as a picture comes into the job all the same, and is told there. */
	private static String mediaType(PictureSource source, Picture picture) {
		try {
			return PictureFile.of(source.bytes(), source.page()).mediaType();
		} catch (UnreadablePictureException e) {
			return picture.getMediaType();
		}
	}

	/**
	 * The job as it is to be written to a file: itself, or a copy whose links lead from there to the same files as now.
	 *
	 * @param file null for none
	 */
	public static Job at(Job job, Path file) {
		Path home = JobHome.of(job).orElse(null);
		if (related(job, home, file).isEmpty() && relatedGuests(job, home, file).isEmpty()) {
			return job;
		}
		Job copy = EcoreUtil.copy(job);
		moved(copy, home, file);
		return copy;
	}

	/** Has the links of a job lead to the same files as before. @param before null for none, as is {@code now} */
	public static void moved(Job job, Path before, Path now) {
		related(job, before, now).forEach(Picture::setLink);
		relatedGuests(job, before, now).forEach(Guest::setFile);
	}

	private static Map<Picture, String> related(Job job, Path before, Path now) {
		Map<Picture, String> links = new LinkedHashMap<>();
		Optional<Path> from = folder(before);
		Optional<Path> to = folder(now);
		if (from.isEmpty() || to.isEmpty() || from.equals(to)) {
			return links;
		}
		for (Picture picture : linked(job)) {
			Path link = PictureSource.path(picture).filter(path -> !path.isAbsolute()).orElse(null);
			if (link != null) {
				links.put(picture, ArtPage.link(seen(from.get().resolve(link), to.get()), ArtPage.ofLink(picture.getLink())));
			}
		}
		return links;
	}

	private static Map<Guest, String> relatedGuests(Job job, Path before, Path now) {
		Map<Guest, String> files = new LinkedHashMap<>();
		Optional<Path> from = folder(before);
		Optional<Path> to = folder(now);
		if (from.isPresent() && to.isPresent() && !from.equals(to)) {
			guests(job).forEach((guest, path) -> files.put(guest, seen(from.get().resolve(path), to.get())));
		}
		return files;
	}

	/** Those that are found by where the job is, with the way there. */
	private static Map<Guest, Path> guests(Job job) {
		Map<Guest, Path> guests = new LinkedHashMap<>();
		for (Guest guest : job.getGuests()) {
			try {
				if (guest.getFile() != null && !guest.getFile().isBlank() && !Path.of(guest.getFile()).isAbsolute()) {
					guests.put(guest, Path.of(guest.getFile()));
				}
			} catch (InvalidPathException e) {
				// is found from nowhere, which is told wherever it is looked for
			}
		}
		return guests;
	}

	/** The way to a file, with slashes; all of it if there is none from the folder. */
	private static String seen(Path file, Path folder) {
		Path whole = file.normalize();
		return whole.getRoot().equals(folder.getRoot()) ? folder.relativize(whole).toString().replace('\\', '/') : whole.toString();
	}

	private static Optional<Path> folder(Path file) {
		return Optional.ofNullable(file).map(each -> each.toAbsolutePath().normalize().getParent());
	}

	private static List<Picture> linked(Job job) {
		return Jobs.elements(job).stream().filter(Picture.class::isInstance).map(Picture.class::cast)
				.filter(picture -> picture.getImage() == null && picture.getLink() != null && !picture.getLink().isBlank())
				.toList();
	}
}
