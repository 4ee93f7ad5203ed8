@echo off
rem Starts Wetmil: finds a Java that is new enough, and fills what is dropped on this file.
setlocal EnableExtensions DisableDelayedExpansion

rem What makes Java start fast; one list, so that it can be changed in one place.
set "FLAGS=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto -XX:MetaspaceSize=64m"

set "JAR=%~dp0..\lib\wetmil.jar"
set "LEAST=17"
set "JAVA="
set "OLD="
if defined JAVA_HOME call :try "%JAVA_HOME%\bin\java.exe"
for %%J in (java.exe) do call :try "%%~$PATH:J"
if defined JAVA goto start
if defined OLD (
  echo Wetmil needs Java %LEAST% or later, and this machine has Java %OLD%. Install OpenJDK %LEAST% or later and start Wetmil again. 1>&2
) else (
  echo Wetmil needs Java %LEAST% or later, and this machine has none. Install OpenJDK %LEAST% or later and start Wetmil again. 1>&2
)

:start
rem The desktop starts a program with nothing or with whole paths; a person at the prompt names a
rem command, or the line that started this window does not hold the name of this file.
set "WETMIL_DROPPED="
if "%~1"=="" goto opened
if /i "%~1"=="%~f1" goto opened
goto typed

:opened
setlocal EnableDelayedExpansion
set "LINE=!CMDCMDLINE!"
if "!LINE:%~nx0=!"=="!LINE!" (
  endlocal
  goto typed
)
rem A name may hold any sign, so the line goes to Wetmil as it stands and is taken apart there.
set "WETMIL_DROPPED=!LINE!"
if "%~1"=="" (
  echo Drop workbooks or folders on wetmil.cmd, and they are filled.
) else if defined JAVA "!JAVA!" !FLAGS! -jar "!JAR!"
echo.
pause
rem Leaves the window for good: what the desktop did not quote must not be run as a command.
exit

:typed
if not defined JAVA exit /b 4
"%JAVA%" %FLAGS% -jar "%JAR%" %*
exit /b %ERRORLEVEL%

:try
rem Takes a Java that is new enough; the file beside it answers at once, asking Java takes a start.
if defined JAVA exit /b 0
if "%~1"=="" exit /b 0
if not exist "%~1" exit /b 0
set "NUMBER="
if exist "%~dp1..\release" for /f "usebackq tokens=1,2 delims==" %%K in ("%~dp1..\release") do if "%%K"=="JAVA_VERSION" set "NUMBER=%%~L"
if not defined NUMBER for /f "tokens=1-3" %%A in ('call "%~1" -version 2^>^&1') do if "%%B"=="version" set "NUMBER=%%~C"
if not defined NUMBER exit /b 0
if "%NUMBER:~0,2%"=="1." set "NUMBER=%NUMBER:~2%"
for /f "delims=.-+_" %%V in ("%NUMBER%") do set "NUMBER=%%V"
if %NUMBER% GEQ %LEAST% (set "JAVA=%~1") else if not defined OLD set "OLD=%NUMBER%"
exit /b 0
