@echo off
rem The workbench: frisket-workbench [JOB.frjob]
setlocal
set "java=javaw"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\javaw"
for %%f in ("%~dp0plugins\org.eclipse.equinox.launcher_*.jar") do set "launcher=%%f"
start "" "%java%" -Xmx2g "-Dfelix.fileinstall.dir=%~dp0dropins" -jar "%launcher%" -nosplash -product org.frisket.app.product %*
