@echo off
rem Builds Kerfwright on first use and whenever its sources are newer, then runs it.
setlocal EnableExtensions DisableDelayedExpansion
set "HOME_DIR=%~dp0"
if "%HOME_DIR:~-1%"=="\" set "HOME_DIR=%HOME_DIR:~0,-1%"
set "BUILT=%HOME_DIR%\app\target"
set "STAMP=%BUILT%\.build-stamp"

rem ---- Java 17 or later ------------------------------------------------------------------------
set "JAVA_EXE="
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA_EXE=%JAVA_HOME%\bin\java.exe"
if not defined JAVA_EXE for %%J in (java.exe) do set "JAVA_EXE=%%~$PATH:J"
if not defined JAVA_EXE (
  echo kerfwright: A JDK 17 or later is needed: install one, or set JAVA_HOME to it. None was found. 1>&2
  exit /b 2
)
set "JAVA_VERSION="
for /f "tokens=2 delims==" %%V in ('""%JAVA_EXE%" -XshowSettings:properties -version 2^>^&1 ^| findstr /c:"java.runtime.version ="" ') do set "JAVA_VERSION=%%V"
set "JAVA_VERSION=%JAVA_VERSION: =%"
for /f "delims=.+-" %%M in ("%JAVA_VERSION%") do set "JAVA_MAJOR=%%M"
if not defined JAVA_MAJOR set "JAVA_MAJOR=0"
if %JAVA_MAJOR% LSS 17 (
  echo kerfwright: A JDK 17 or later is needed: install one, or set JAVA_HOME to it. Found %JAVA_VERSION% at %JAVA_EXE%. 1>&2
  exit /b 2
)

rem ---- build when needed -----------------------------------------------------------------------
set "STALE="
if not exist "%STAMP%" set "STALE=1"
if not exist "%BUILT%\kerfwright-app.jar" set "STALE=1"
if not defined STALE (
  powershell -NoProfile -Command "$t=(Get-Item -LiteralPath $env:STAMP).LastWriteTimeUtc; $n=Get-ChildItem -LiteralPath $env:HOME_DIR -Recurse -File -Include pom.xml,*.java,*.jte,*.csv,*.css,*.js,*.yaml,*.properties,*.svg | Where-Object { $_.FullName -notmatch '\\(target|test)\\' -and $_.LastWriteTimeUtc -gt $t } | Select-Object -First 1; if ($n) { exit 1 } else { exit 0 }"
  if errorlevel 1 set "STALE=1"
)
if not defined STALE goto run

where mvn >nul 2>nul
if errorlevel 1 (
  echo kerfwright: Maven 3.8 or later is needed to build, and mvn was not found on the PATH. 1>&2
  exit /b 2
)
echo kerfwright: building ^(the first time takes a few minutes, libraries are fetched^) ... 1>&2
if not exist "%BUILT%" mkdir "%BUILT%"
type nul > "%BUILT%\.build-begun"
pushd "%HOME_DIR%"
call mvn -B -q -pl app -am -Dkerfwright.launch -Dmaven.test.skip=true -Dspotless.check.skip=true package 1>&2
set "BUILD_CODE=%ERRORLEVEL%"
popd
if not "%BUILD_CODE%"=="0" (
  echo kerfwright: the build failed; what went wrong stands above. 1>&2
  exit /b 2
)
del /q "%BUILT%\*.jsa" >nul 2>nul
move /y "%BUILT%\.build-begun" "%STAMP%" >nul
echo kerfwright: built 1>&2

:run
rem ---- run -------------------------------------------------------------------------------------
set "KIND=small"
set "OPTIONS=-Xmx128m -XX:TieredStopAtLevel=1"
if /i "%~1"=="serve" ( set "KIND=serve" & set "OPTIONS=-Xms24m -Xmx256m" )
for %%C in (plan day evidence heat) do if /i "%~1"=="%%C" ( set "KIND=plan" & set "OPTIONS=-Xmx320m" )
set "ARCHIVE=%BUILT%\%KIND%-%JAVA_VERSION:+=-%.jsa"
if %JAVA_MAJOR% GEQ 19 (
  set "SHARED=-XX:+AutoCreateSharedArchive -XX:SharedArchiveFile="
) else if exist "%ARCHIVE%" (
  set "SHARED=-XX:SharedArchiveFile="
) else (
  set "SHARED=-XX:ArchiveClassesAtExit="
)
"%JAVA_EXE%" %OPTIONS% -XX:+UseSerialGC -Xshare:auto -Xlog:disable %SHARED%"%ARCHIVE%" -Djava.awt.headless=true -jar "%BUILT%\kerfwright-app.jar" %*
exit /b %ERRORLEVEL%
