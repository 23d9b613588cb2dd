@echo off
rem The command line: frisket VERB ...
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
for %%f in ("%~dp0plugins\org.eclipse.equinox.launcher_*.jar") do set "launcher=%%f"
"%java%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmx1g -Djava.awt.headless=true -Dosgi.instance.area=@none "-Dfelix.fileinstall.dir=%~dp0dropins" -jar "%launcher%" -nosplash -application org.frisket.cli.frisket %*
exit /b %errorlevel%
