/**
 * The way from a job to cut-ready regions: {@link org.frisket.prepare.JobPreparer} works a job through,
 * {@link org.frisket.prepare.Makeready} checks what came out. Everything here runs without a screen.
 */
package org.frisket.prepare;
