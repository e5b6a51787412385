@echo off
rem Starts akin from a checkout on Windows: finds Java, builds once, keeps a class-data archive. See the file akin beside
rem this one for the variables: AKIN_JAVA, AKIN_JAVA_OPTS, AKIN_NO_CACHE and AKIN_TRAIN mean the same here.
setlocal EnableExtensions DisableDelayedExpansion

for %%D in ("%~dp0..\..") do set "AKIN_ROOT=%%~fD"
set "AKIN_TARGET=%AKIN_ROOT%\engine\target"
set "AKIN_FOUND="
set "AKIN_FEATURE=0"

if defined AKIN_JAVA (
  if exist "%AKIN_JAVA%\bin\java.exe" (call :consider "%AKIN_JAVA%") else for %%J in ("%AKIN_JAVA%") do call :consider_exe "%%~fJ"
  goto :chosen
)
if defined JAVA_HOME call :consider "%JAVA_HOME%"
for %%J in (java.exe) do if not "%%~$PATH:J"=="" call :consider_exe "%%~$PATH:J"
for %%P in ("%ProgramFiles%\Java" "%ProgramFiles%\Eclipse Adoptium" "%ProgramFiles%\Microsoft" "%LOCALAPPDATA%\Programs\Eclipse Adoptium") do (
  if exist "%%~P" for /d %%H in ("%%~P\*") do call :consider "%%~fH"
)
:chosen
if not defined AKIN_FOUND (
  >&2 echo akin: no Java 17 or newer found; install one ^(25 starts fastest^), or say where it is with JAVA_HOME
  exit /b 3
)

call :jars
if not defined AKIN_JAR call :build
if not defined AKIN_JAR exit /b 3

set "AKIN_SHARING=-Xshare:auto"
set "AKIN_QUICK=-XX:+UseSerialGC -XX:TieredStopAtLevel=1 -XX:-UsePerfData -Djdk.reflect.useNativeAccessorOnly=true"
if "%AKIN_NO_CACHE%"=="1" goto :run
if not defined LOCALAPPDATA goto :run
if not exist "%LOCALAPPDATA%\akin" mkdir "%LOCALAPPDATA%\akin" 2>nul
if not exist "%LOCALAPPDATA%\akin" goto :run
rem The name of the archive tells the Java, and the size and time of the jar; Java itself refuses one that does not fit.
for %%F in ("%AKIN_JAR%") do set "AKIN_KEY=%%~zF %%~tF"
for %%F in ("%AKIN_FOUND%\release") do set "AKIN_KEY=%AKIN_FEATURE%-%AKIN_KEY%-%%~zF"
set "AKIN_KEY=%AKIN_KEY::=%"
set "AKIN_KEY=%AKIN_KEY:/=%"
set "AKIN_KEY=%AKIN_KEY:.=%"
set "AKIN_KEY=%AKIN_KEY: =-%"
if %AKIN_FEATURE% GEQ 25 (set "AKIN_KIND=aot") else set "AKIN_KIND=jsa"
if %AKIN_FEATURE% EQU 24 goto :run
set "AKIN_ARCHIVE=%LOCALAPPDATA%\akin\%AKIN_KEY%.%AKIN_KIND%"
if exist "%AKIN_ARCHIVE%" (
  if "%AKIN_KIND%"=="aot" (set "AKIN_SHARING=-XX:AOTCache=%AKIN_ARCHIVE%") else set "AKIN_SHARING=-XX:SharedArchiveFile=%AKIN_ARCHIVE%"
  goto :run
)
rem Only when asked: a window that opens behind a first run would be in the way.
if not "%AKIN_TRAIN%"=="1" goto :run
if "%AKIN_KIND%"=="aot" (set "AKIN_MAKE=-XX:AOTCacheOutput=%AKIN_ARCHIVE%.new") else set "AKIN_MAKE=-XX:ArchiveClassesAtExit=%AKIN_ARCHIVE%.new"
pushd "%AKIN_ROOT%"
"%AKIN_FOUND%\bin\java.exe" %AKIN_QUICK% -Xmx256m -Xlog:disable "%AKIN_MAKE%" -cp "%AKIN_JAR%;%AKIN_TARGET%\lib\*" ^
  -Dakin.terminal=false akin.engine.cli.Akin check samples >nul 2>nul
popd
if exist "%AKIN_ARCHIVE%.new" move /y "%AKIN_ARCHIVE%.new" "%AKIN_ARCHIVE%" >nul
if exist "%AKIN_ARCHIVE%" (
  if "%AKIN_KIND%"=="aot" (set "AKIN_SHARING=-XX:AOTCache=%AKIN_ARCHIVE%") else set "AKIN_SHARING=-XX:SharedArchiveFile=%AKIN_ARCHIVE%"
)

:run
rem What judges thousands of candidates is worth the thorough compiler, and needs room for all that run at once.
set "AKIN_ROOM=-Xmx96m"
if "%~1"=="survey" set "AKIN_ROOM=-XX:TieredStopAtLevel=4 -Xmx640m"
if "%~1"=="solve" set "AKIN_ROOM=-Xmx256m"
"%AKIN_FOUND%\bin\java.exe" %AKIN_QUICK% %AKIN_ROOM% -Xlog:disable -Xlog:all=error:stderr "%AKIN_SHARING%" %AKIN_JAVA_OPTS% ^
  -cp "%AKIN_JAR%;%AKIN_TARGET%\lib\*" akin.engine.cli.Akin %*
exit /b %ERRORLEVEL%

:jars
set "AKIN_JAR="
if not exist "%AKIN_TARGET%\lib\akin-model-*.jar" exit /b 0
pushd "%AKIN_TARGET%"
for %%F in (akin-engine-*.jar) do set "AKIN_JAR=%AKIN_TARGET%\%%F"
popd
exit /b 0

:build
set "AKIN_MAVEN="
for %%M in (mvn.cmd mvn.bat) do if not "%%~$PATH:M"=="" set "AKIN_MAVEN=%%~$PATH:M"
if not defined AKIN_MAVEN (
  >&2 echo akin: must be built once, and Maven is missing; install Maven 3.8 or newer
  exit /b 1
)
if not exist "%AKIN_FOUND%\bin\javac.exe" (
  >&2 echo akin: must be built once, which needs a JDK, and "%AKIN_FOUND%" has no compiler
  exit /b 1
)
>&2 echo akin: building once, this takes a minute or two ...
if not exist "%AKIN_TARGET%" mkdir "%AKIN_TARGET%"
pushd "%AKIN_ROOT%"
set "AKIN_OLD_HOME=%JAVA_HOME%"
set "JAVA_HOME=%AKIN_FOUND%"
call "%AKIN_MAVEN%" -B -q -Dquick -DskipTests package >"%AKIN_TARGET%\build.log" 2>&1
set "AKIN_BUILT=%ERRORLEVEL%"
set "JAVA_HOME=%AKIN_OLD_HOME%"
popd
if not "%AKIN_BUILT%"=="0" (
  >&2 echo akin: the build failed; all of it is in "%AKIN_TARGET%\build.log"
  exit /b 1
)
call :jars
if not defined AKIN_JAR >&2 echo akin: the build made nothing to run; see "%AKIN_TARGET%\build.log"
exit /b 0

:consider_exe
for %%B in ("%~dp1..") do call :consider "%%~fB"
exit /b 0

rem Takes a Java's folder when it is the first that is new enough, or a newer one from 25 on.
:consider
if not exist "%~1\bin\java.exe" exit /b 0
if not exist "%~1\release" exit /b 0
set "AKIN_VERSION="
for /f "usebackq tokens=1,2 delims==" %%U in ("%~1\release") do if "%%U"=="JAVA_VERSION" set "AKIN_VERSION=%%~V"
for /f "tokens=1 delims=.-+" %%V in ("%AKIN_VERSION%") do set "AKIN_VERSION=%%V"
if not defined AKIN_VERSION exit /b 0
if %AKIN_VERSION% LSS 17 exit /b 0
if not defined AKIN_FOUND goto :take
if %AKIN_VERSION% GEQ 25 if %AKIN_VERSION% GTR %AKIN_FEATURE% goto :take
exit /b 0
:take
set "AKIN_FOUND=%~1"
set "AKIN_FEATURE=%AKIN_VERSION%"
exit /b 0
