/**
 * Repair of a job's outlines as it is decided about: what a course of steps would do to each of them, every single repair
 * with its place, how far anything moves, and the one edit that does it.
 */
package org.frisket.prepare.repair;
