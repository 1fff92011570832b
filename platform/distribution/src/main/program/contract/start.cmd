@echo off
rem Starts a bundle of your own, in a new folder where you are; the same as "start" beside it, for Windows.
rem   contract\start calculator PACKAGE ID ...    contract\start template PACKAGE ID ...
rem Not tried on Windows yet.
setlocal
if "%~3"=="" (
    echo start: say what, in which package, and its id: start calculator net.example.walks lens-cord>&2
    exit /b 64
)
set "kind=%~1"
set "package=%~2"
set "id=%~3"
if not "%kind%"=="calculator" if not "%kind%"=="template" (
    echo start: "%kind%" is not known. Start a calculator or a template.>&2
    exit /b 64
)
powershell -NoProfile -Command "if ($env:id -cnotmatch '^[a-z][a-z0-9]*(-[a-z0-9]+)*$') { exit 1 }"
if errorlevel 1 (
    echo start: "%id%" is no id. Write lower-case words joined by hyphens, such as lens-cord.>&2
    exit /b 64
)
if exist "%package%.%id%" (
    echo start: %package%.%id% is there already, and nothing was made. Take another id, or move it away.>&2
    exit /b 73
)
rem lens-cord is written by the class LensCord
for /f "usebackq delims=" %%c in (`powershell -NoProfile -Command "-join ($env:id.Split('-') | ForEach-Object { $_.Substring(0, 1).ToUpper() + $_.Substring(1) })"`) do set "class=%%c"
set "here=%~dp0"
set "here=%here:~0,-1%"
set "more="
:more
if "%~4"=="" goto make
set more=%more% %4
shift /4
goto more
:make
call mvn -B -q -f "%here%\start.xml" org.apache.maven.plugins:maven-archetype-plugin:3.4.1:generate ^
    -DarchetypeCatalog=internal -DarchetypeGroupId=org.hidewright -DarchetypeArtifactId=org.hidewright.archetype ^
    -DarchetypeVersion=0.1.0-SNAPSHOT "-DoutputDirectory=%cd%" "-Dcontract=%here:\=/%" ^
    "-Dkind=%kind%" "-Did=%id%" "-DclassName=%class%" "-Dpackage=%package%" "-DgroupId=%package%" "-DartifactId=%package%.%id%" -Dversion=0.1.0 %more%
if errorlevel 1 (
    echo start: %package%.%id% was not made; Maven says above what kept it.>&2
    exit /b 70
)
echo %package%.%id% holds a %kind% that works. What it asks and works out is in
echo     src\main\java\%package:.=\%\%class%.java
echo Build it and run its tests:
echo     cd %package%.%id%
echo     mvn verify
echo Its README.md says how it comes into the program.
