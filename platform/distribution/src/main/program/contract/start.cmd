@echo off
rem Starts a bundle of your own, in a new folder where you are; the same as "start" beside it, for Windows.
rem   contract\start.cmd calculator PACKAGE ID ...    contract\start.cmd template PACKAGE ID ...
rem Read by the rules of cmd.exe and held to them by a test, but not run on Windows yet. What the rules ask for here: a name with
rem a bracket ends a block, so that there are none with names in them; an exclamation mark is lost where expansion is delayed; an
rem option such as -Dname=value comes as two arguments, so that what follows the id is taken from the whole line.
setlocal EnableExtensions DisableDelayedExpansion
if "%~3"=="" goto usage
set "kind=%~1"
set "package=%~2"
set "id=%~3"
set rest=%*
if not "%kind%"=="calculator" if not "%kind%"=="template" goto unknown
where powershell >nul 2>nul
if errorlevel 1 goto nopowershell
powershell -NoProfile -Command "if ($env:id -cnotmatch '^[a-z][a-z0-9]*(-[a-z0-9]+)*$') { exit 1 }"
if errorlevel 1 goto noid
powershell -NoProfile -Command "if ($env:package -cnotmatch '^[a-z][a-z0-9_]*(\.[a-z][a-z0-9_]*)*$') { exit 1 }"
if errorlevel 1 goto nopackage
set "words=abstract|assert|boolean|break|byte|case|catch|char|class|const|continue|default|do|double|else|enum|extends|false|final|finally|float|for|goto|if|implements|import|instanceof|int|interface|long|native|new|null|package|private|protected|public|return|short|static|strictfp|super|switch|synchronized|this|throw|throws|transient|true|try|void|volatile|while"
powershell -NoProfile -Command "if ($env:package -cmatch ('^java\.|(^|\.)(' + $env:words + ')(\.|$)')) { exit 1 }"
if errorlevel 1 goto nopackage
rem lens-cord is written by the class LensCord, in Turkey too
for /f "usebackq delims=" %%c in (`powershell -NoProfile -Command "(($env:id -split '-') | ForEach-Object { $_.Substring(0, 1).ToUpperInvariant() + $_.Substring(1) }) -join ''"`) do set "class=%%c"
set "words=Answered|Asked|Asking|BundleContract|Calculates|Calculator|Component|Formula|Item|Length|List|Made|Math|NoRoom|NoticeKind|Object|Outcome|Outlines|Override|Piece|Point|Record|Rounding|Source|Steps|String|Test|Working"
rem names that the class made here uses itself
powershell -NoProfile -Command "if ($env:class -cmatch ('^(' + $env:words + ')$')) { exit 1 }"
if errorlevel 1 goto noclass
if exist "%package%.%id%" goto there
where mvn >nul 2>nul
if errorlevel 1 goto nomaven
rem Maven knows best which Java it takes, wherever that lies; where it does not say, it says later what is wrong
powershell -NoProfile -Command "if ((& mvn -version 2>&1 | Out-String) -match 'Java version: (\d+)' -and [int]$Matches[1] -lt 17) { exit 1 }"
if errorlevel 1 goto oldjava
set "here=%~dp0"
set "here=%here:~0,-1%"
set "more="
setlocal EnableDelayedExpansion
for /f "tokens=3*" %%a in ("!rest!") do endlocal & set more=%%b
call mvn -B -q -f "%here%\start.xml" org.apache.maven.plugins:maven-archetype-plugin:3.4.1:generate ^
    "-DoutputDirectory=%cd:\=/%" "-Dcontract=%here:\=/%" ^
    "-Dkind=%kind%" "-Did=%id%" "-DclassName=%class%" "-Dpackage=%package%" "-DgroupId=%package%" "-DartifactId=%package%.%id%" -Dversion=0.1.0 %more%
if not "%errorlevel%"=="0" goto failed
echo %package%.%id% holds a %kind% that works. What it asks and works out is in
echo     src\main\java\%package:.=\%\%class%.java
echo Build it and run its tests:
echo     cd %package%.%id%
echo     mvn verify
echo Its README.md says how it comes into the program.
exit /b 0
:usage
echo start: say what, in which package, and its id: start.cmd calculator net.example.walks lens-cord>&2
exit /b 64
:unknown
echo start: "%kind%" is not known. Start a calculator or a template.>&2
exit /b 64
:noid
echo start: "%id%" is no id. Write lower-case words joined by hyphens, such as lens-cord.>&2
exit /b 64
:nopackage
echo start: "%package%" is no package. Write lower-case words of letters and digits joined by dots, none of them a word of Java itself such as new, as in net.example.walks.>&2
exit /b 64
:noclass
echo start: "%id%" would make a class %class%, and what is made here needs that name for something else. Say more of it, such as my-%id%.>&2
exit /b 64
:there
echo start: %package%.%id% is there already, and nothing was made. Take another id, or move it away.>&2
exit /b 73
:nopowershell
echo start: PowerShell is not here, and it reads the id. It comes with Windows: see that it is on the path, and start again.>&2
exit /b 69
:nomaven
echo start: Maven is not here (mvn), and it makes the bundle and builds it. Install it, and start again.>&2
exit /b 69
:oldjava
echo start: Maven has a Java older than 17 here (mvn -version says which). Install a JDK 17, set JAVA_HOME to it, and start again.>&2
exit /b 69
:failed
echo start: %package%.%id% was not made; Maven says above what kept it.>&2
exit /b 70
