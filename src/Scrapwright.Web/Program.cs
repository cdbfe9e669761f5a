return await Scrapwright.Web.WebProgram.RunAsync(args);
