@echo off
rem Starts Taperbook with the Java that came with it, or that JAVA_HOME names, or the first one on
rem the path (17 or newer).
setlocal EnableExtensions DisableDelayedExpansion
set "here=%~dp0"
set "java="
if exist "%here%..\runtime\bin\java.exe" goto image
if not defined JAVA_HOME goto path
rem Some installers put the folder in quotes.
set "java=%JAVA_HOME:"=%\bin\java.exe"
if exist "%java%" goto start
:path
for %%j in (java.exe) do set "java=%%~$PATH:j"
if defined java goto start
echo taperbook: no Java found. Install Java 17 or newer, or set JAVA_HOME. 1>&2
exit /b 3
:image
set "java=%here%..\runtime\bin\java.exe"
set "here=%here%..\app\"
:start
rem The caches of loaded classes only speed up the start; another Java than the build's goes without.
set "cache=-XX:SharedArchiveFile=%here%taperbook.jsa"
if exist "%here%taperbook.aot" set "cache=-XX:AOTCache=%here%taperbook.aot"
rem Messages are in UTF-8; the console has its own code page.
set "page="
for /f "tokens=2 delims=:." %%p in ('chcp 2^>nul') do set "page=%%p"
if defined page chcp 65001 >nul
rem File systems of Windows do not tell when a file was changed, so there is no answer before the
rem program is loaded. The console cannot be asked for its width either.
"%java%" "%cache%" -Xlog:disable -Xlog:all=off ^
  -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -XX:InitialRAMPercentage=3 -XX:MaxNewSize=64m -Djava.awt.headless=true ^
  -Dtaperbook.terminal=false -Dtaperbook.results=false -Dtaperbook.width= -jar "%here%taperbook.jar" %*
set "status=%errorlevel%"
if defined page chcp %page% >nul
rem Unlike exit /b, this is also a failure for && and || of the caller.
"%ComSpec%" /d /c exit %status%
