Console.WriteLine("scrapwright");
