@echo off
rem Starts Taperbook with the Java that came with it, or that JAVA_HOME names, or the one on the
rem path (17 or newer).
setlocal
set "here=%~dp0"
set "java=java.exe"
if exist "%here%..\runtime\bin\java.exe" (
  set "java=%here%..\runtime\bin\java.exe"
  set "here=%here%..\app\"
) else if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
"%java%" -version >nul 2>&1
if errorlevel 1 (
  echo taperbook: no Java found. Install Java 17 or newer, or set JAVA_HOME. 1>&2
  exit /b 3
)
rem Messages are in UTF-8; the console has its own code page.
for /f "tokens=2 delims=:." %%p in ('chcp') do set "page=%%p"
chcp 65001 >nul
rem File systems of Windows do not tell when a file was changed, so there is no answer before the
rem program is loaded. The console cannot be asked for its width either.
"%java%" -XX:SharedArchiveFile="%here%taperbook.jsa" -Xshare:auto -Xlog:disable -Xlog:all=off ^
  -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -XX:InitialRAMPercentage=3 -XX:MaxNewSize=64m -Djava.awt.headless=true ^
  -Dtaperbook.terminal=false -Dtaperbook.results=false -Dtaperbook.width= -jar "%here%taperbook.jar" %*
set "status=%errorlevel%"
chcp %page% >nul
exit /b %status%
