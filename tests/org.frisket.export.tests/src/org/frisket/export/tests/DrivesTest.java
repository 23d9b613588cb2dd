package org.frisket.export.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.frisket.export.drive.Drive;
import org.frisket.export.drive.Drives;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Removable drives, as the system tells of them. */
class DrivesTest {

	/** In the form of proc_pid_mounts(5). */
	private static final String TABLE = """
			/dev/sda2 / ext4 rw,relatime 0 0
			proc /proc proc rw 0 0
			/dev/sdb1 /media/studio/CUTTER\\040CARD vfat rw,nosuid,utf8 0 0
			/dev/sdc1 /run/media/ina/PLOTS exfat ro,nosuid 0 0
			server:/jobs /mnt/jobs nfs4 rw 0 0
			/dev/sdd1 /mnt/stick vfat rw 0 0
			tmpfs /mnt tmpfs rw 0 0
			/dev/sde1 /mediatheque/x ext4 rw 0 0
			too few
			/dev/sdb1 /media/studio/CUTTER\\040CARD vfat rw 0 0
			""";

	@TempDir
	private Path folder;

	@Test
	void whatIsMountedWhereDrivesAreIsADrive() {
		assertEquals(List.of(new Drive("CUTTER CARD", Path.of("/media/studio/CUTTER CARD"), true),
				new Drive("PLOTS", Path.of("/run/media/ina/PLOTS"), false), new Drive("stick", Path.of("/mnt/stick"), true)),
				Drives.ofMountTable(() -> TABLE).mounted());
	}

	@Test
	void fileKnowsItsDrive() {
		Drives drives = Drives.ofMountTable(() -> TABLE);
		assertEquals("stick", drives.holding(Path.of("/mnt/stick/jobs/../a.dxf")).orElseThrow().name());
		assertTrue(drives.holding(Path.of("/mnt/sticky/a.dxf")).isEmpty());
		assertTrue(drives.holding(Path.of("/mnt/stick/../a.dxf")).isEmpty());
	}

	@Test
	void thisComputerCanBeAsked() {
		Drives.ofThisComputer().mounted().forEach(drive -> assertFalse(drive.name().isEmpty()));
	}

	@Test
	void settlingTellsWhatIsNotThereAnyMore() throws Exception {
		Drive drive = new Drive("stick", folder, true);
		Path file = Files.writeString(folder.resolve("a.dxf"), "whole");
		drive.settle(List.of(file));
		assertEquals("whole", Files.readString(file));
		Files.delete(file);
		IOException gone = assertThrows(IOException.class, () -> drive.settle(List.of(file)));
		assertTrue(gone.getMessage().contains("stick") && gone.getMessage().contains(file.toString()), gone.getMessage());
	}
}
